namespace GlowMix.Predictions;

/// <summary>A value for every figure of <see cref="FigureCatalogue"/>; null where a figure does not exist. Immutable.</summary>
public sealed class FigureValues
{
    private readonly double?[] values;

    private FigureValues(double?[] values) => this.values = values;

    /// <summary>Value of a figure.</summary>
    public double? this[Figure figure] =>
        values[(figure ?? throw new ArgumentNullException(nameof(figure))).Index];

    /// <summary>Value of a figure by its full name.</summary>
    /// <exception cref="ArgumentException">No figure has this name.</exception>
    public double? this[string name] =>
        this[
            FigureCatalogue.Find(name)
                ?? throw new ArgumentException($"No figure is called '{name}'.", nameof(name))
        ];

    /// <summary>Value of a figure of a decay at stated minutes.</summary>
    public double? this[string family, double minutes] => this[FigureCatalogue.AtMinutes(family, minutes)];

    /// <summary>Collects values by name.</summary>
    public sealed class Builder
    {
        private double?[]? values = new double?[FigureCatalogue.All.Count];

        /// <summary>A builder that begins with the values of another run.</summary>
        public static Builder From(FigureValues figures)
        {
            ArgumentNullException.ThrowIfNull(figures);
            return new() { values = (double?[])figures.values.Clone() };
        }

        /// <summary>Sets a figure; a number that is not finite is an error of the program, not a figure.</summary>
        /// <exception cref="ArgumentException">No such figure, or not a finite number.</exception>
        public Builder Set(string name, double? value)
        {
            var figure =
                FigureCatalogue.Find(name)
                ?? throw new ArgumentException($"No figure is called '{name}'.", nameof(name));
            if (value is double number && !double.IsFinite(number))
            {
                throw new ArgumentException($"{name} came out as {number}.", nameof(value));
            }
            (values ?? throw new InvalidOperationException("Already built."))[figure.Index] = value;
            return this;
        }

        /// <summary>Sets a figure of a decay.</summary>
        public Builder Set(string family, double minutes, double? value) =>
            Set(FigureCatalogue.AtMinutes(family, minutes), value);

        /// <summary>The values; the builder is used up.</summary>
        public FigureValues Build()
        {
            var built = new FigureValues(values ?? throw new InvalidOperationException("Already built."));
            values = null;
            return built;
        }
    }
}
