namespace GlowMix.Materials;

/// <summary>
/// How far a value may be off: a factor either way, two ends, or percent either way. Each spans two standard deviations.
/// The default is no statement.
/// </summary>
public readonly record struct Doubt
{
    private Doubt(double? factor, double? low, double? high, double? tolerancePercent) =>
        (Factor, Low, High, TolerancePercent) = (factor, low, high, tolerancePercent);

    /// <summary>The value divided and multiplied by it; above 1.</summary>
    public double? Factor { get; }

    /// <summary>Lower end, in the value's unit.</summary>
    public double? Low { get; }

    /// <summary>Upper end, in the value's unit.</summary>
    public double? High { get; }

    /// <summary>Percent of the value either way.</summary>
    public double? TolerancePercent { get; }

    /// <summary>Nothing is stated.</summary>
    public bool IsNone => Factor is null && Low is null && TolerancePercent is null;

    /// <summary>A factor either way.</summary>
    public static Doubt OfFactor(double factor) =>
        factor > 1 && double.IsFinite(factor)
            ? new(factor, null, null, null)
            : throw new ArgumentOutOfRangeException(nameof(factor), factor, "A factor must be above 1.");

    /// <summary>Two ends in the value's unit.</summary>
    public static Doubt Between(double low, double high) =>
        low <= high
            ? new(null, low, high, null)
            : throw new ArgumentOutOfRangeException(nameof(low), low, "The lower end lies above the upper.");

    /// <summary>Percent of the value either way.</summary>
    public static Doubt OfPercent(double tolerancePercent) =>
        tolerancePercent is > 0 and <= 100
            ? new(null, null, null, tolerancePercent)
            : throw new ArgumentOutOfRangeException(
                nameof(tolerancePercent),
                tolerancePercent,
                "A tolerance must be above 0, up to 100 %."
            );

    /// <summary>The low end around a value; the value itself if nothing is stated.</summary>
    public double LowOf(double value) =>
        Low ?? (Factor is { } factor ? value / factor : value - Spread(value));

    /// <summary>The high end around a value; the value itself if nothing is stated.</summary>
    public double HighOf(double value) => High ?? (value * (Factor ?? 1)) + Spread(value);

    private double Spread(double value) => Math.Abs(value) * (TolerancePercent ?? 0) / 100;
}
