using System.Collections.Immutable;

namespace GlowMix.Predictions.Kept;

/// <summary>
/// A prediction as it is kept beside its recipe, to be compared in a review: one number a line, rounded to steps, in an order that never
/// changes, with a word for every input. The same inputs give the same bytes.
/// </summary>
public sealed record KeptFigures
{
    /// <summary>Number of the format.</summary>
    public const int Format = 1;

    /// <summary>The recipe's file, without folder.</summary>
    public required string Recipe { get; init; }

    /// <summary><see cref="Predictions.ModelVersion"/> of the program that made it.</summary>
    public required int ModelVersion { get; init; }

    /// <summary>Draws behind the bands; 0 where they are those of the bounding runs.</summary>
    public required int DrawCount { get; init; }

    /// <summary>What the prediction was worked out from.</summary>
    public required ImmutableArray<PredictionInput> Inputs { get; init; }

    /// <summary>The likely figures that exist, places along the pour among them.</summary>
    public required ImmutableArray<KeptFigure> Figures { get; init; }

    /// <summary>Low and high of the figures that have a band.</summary>
    public required ImmutableArray<KeptFigure> Bands { get; init; }

    /// <summary>Figure and state of the recipe's targets, in order.</summary>
    public required ImmutableArray<KeptTarget> Targets { get; init; }

    /// <summary>Codes of the warnings, heaviest first, each once.</summary>
    public required ImmutableArray<string> Warnings { get; init; }

    /// <summary>What a prediction leaves to keep.</summary>
    /// <param name="prediction">The prediction.</param>
    /// <param name="recipe">The recipe's file, without folder.</param>
    /// <param name="inputs">What it was worked out from.</param>
    public static KeptFigures Of(Prediction prediction, string recipe, IReadOnlyList<PredictionInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(prediction);
        return new()
        {
            Recipe = recipe,
            ModelVersion = Predictions.ModelVersion.Number,
            DrawCount = prediction.DrawCount,
            Inputs = [.. inputs],
            Figures = [.. FiguresOf(prediction)],
            Bands = [.. prediction.Bands.SelectMany(b => BandOf(b.Key, b.Value))],
            Targets = [.. prediction.Targets.Select(t => new KeptTarget(t.Figure.Name, t.State))],
            Warnings = [.. prediction.Warnings.Select(w => w.Code).Distinct(StringComparer.Ordinal)],
        };
    }

    private static IEnumerable<KeptFigure> FiguresOf(Prediction prediction)
    {
        foreach (var figure in FigureCatalogue.All)
        {
            if (figure.Name == FigureCatalogue.AlongLargestStep)
            {
                foreach (var kept in prediction.Along.SelectMany(AlongOf))
                {
                    yield return kept;
                }
            }
            if (prediction.Figures[figure] is double value)
            {
                yield return Kept(figure.Name, figure.Family, value);
            }
        }
    }

    private static IEnumerable<KeptFigure> AlongOf(AlongPlace place)
    {
        foreach (
            var (part, value) in new (string, double?)[]
            {
                ("depth_mm", place.DepthMm),
                ("cct_k", place.CctK),
                ("duv", place.Duv),
                ("flux_lm", place.FluxLm),
                ("luminance_10_min_mcd_m2", place.LuminanceAt10MinMcdPerM2),
            }
        )
        {
            if (value is double known)
            {
                string name = $"along.{place.Place}.{part}";
                yield return Kept(name, name, known);
            }
        }
    }

    private static IEnumerable<KeptFigure> BandOf(Figure figure, Band band)
    {
        foreach (var (end, value) in new[] { ("low", band.Low), ("high", band.High) })
        {
            if (value is double known)
            {
                yield return Kept($"{figure.Name}.{end}", figure.Family, known);
            }
        }
    }

    private static KeptFigure Kept(string name, string family, double value) =>
        new(name, FigureSteps.Of(family).Round(value));
}
