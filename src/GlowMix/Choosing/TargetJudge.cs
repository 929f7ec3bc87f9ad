using GlowMix.Colour;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>Holds a prediction against the targets of its recipe.</summary>
internal static class TargetJudge
{
    private static readonly string[] Renderings = ["lit.ra", "lit.r9", "bare.ra", "bare.r9"];

    /// <summary>The verdict on each target, in order.</summary>
    /// <param name="targets">The recipe's.</param>
    /// <param name="prediction">With its bands.</param>
    /// <param name="drawn">A figure in each draw, null where it does not exist there; null where nothing is drawn.</param>
    /// <param name="readingFor">The reading that would narrow a figure's band most; null if none is known.</param>
    public static IReadOnlyList<TargetVerdict> Of(
        IEnumerable<RecipeTarget> targets,
        Prediction prediction,
        Func<Figure, IReadOnlyList<double?>?> drawn,
        Func<Figure, string?> readingFor
    ) => [.. targets.Select(target => Of(target, prediction, drawn, readingFor))];

    private static TargetVerdict Of(
        RecipeTarget target,
        Prediction prediction,
        Func<Figure, IReadOnlyList<double?>?> drawn,
        Func<Figure, string?> readingFor
    )
    {
        var figure =
            FigureCatalogue.Find(target.Figure, target.AtMinutes)
            ?? throw new ArgumentException($"No figure is called '{target.Figure}'.", nameof(target));
        var verdict = new TargetVerdict
        {
            Target = target,
            Figure = figure,
            Value = prediction.Figures[figure],
            State = TargetState.NotJudged,
        };
        if (ReasonNotToJudge(figure, prediction) is { } reason)
        {
            return verdict with { Reason = reason };
        }
        double value = verdict.Value!.Value;
        var state = StateOf(target, BandOf(figure, prediction), value);
        return verdict with
        {
            State = state,
            ShareOfDraws = ShareOf(target, drawn(figure)),
            Margin = Math.Min(
                value - (target.AtLeast ?? double.NegativeInfinity),
                (target.AtMost ?? double.PositiveInfinity) - value
            ),
            DecidedBy = state == TargetState.TooClose ? readingFor(figure) : null,
        };
    }

    /// <summary>Whether a value meets a target.</summary>
    public static bool Meets(RecipeTarget target, double? value) =>
        value is double v && !(v < target.AtLeast) && !(v > target.AtMost);

    private static TargetState StateOf(RecipeTarget target, Band band, double value)
    {
        double low = Math.Min(value, band.Low ?? value);
        double high = Math.Max(value, band.High ?? value);
        return Meets(target, low) && Meets(target, high) ? TargetState.Met
            : high < target.AtLeast || low > target.AtMost ? TargetState.Missed
            : TargetState.TooClose;
    }

    private static double? ShareOf(RecipeTarget target, IReadOnlyList<double?>? drawn) =>
        drawn is { Count: > 0 } ? drawn.Count(v => Meets(target, v)) / (double)drawn.Count : null;

    private static Band BandOf(Figure figure, Prediction prediction) =>
        prediction.Bands.FirstOrDefault(b => b.Key.Index == figure.Index).Value;

    private static string? ReasonNotToJudge(Figure figure, Prediction prediction)
    {
        string name = figure.Name;
        if (Renderings.Contains(name) && !RenderingIsMeaningful(name, prediction))
        {
            return TargetTexts.RenderingMeansNothing;
        }
        return prediction.Figures[figure] is not null ? null
            : name.StartsWith("afterglow.", StringComparison.Ordinal) && prediction.Decay is null
                ? TargetTexts.NoPigment
            : name.StartsWith("along_", StringComparison.Ordinal) ? TargetTexts.LevelPour
            : name.EndsWith(".cct_k", StringComparison.Ordinal)
            || name.EndsWith(".duv", StringComparison.Ordinal)
            || name.EndsWith("shift_k", StringComparison.Ordinal)
                ? TargetTexts.TooFarFromWhite
            : name == "casting.cost" ? TargetTexts.PricesUnknown
            : name.StartsWith("casting.", StringComparison.Ordinal) && prediction.Loadings.Count == 0
                ? TargetTexts.NoPigment
            : name.EndsWith("flux_lm", StringComparison.Ordinal)
            || name.StartsWith("casting.", StringComparison.Ordinal)
                ? TargetTexts.SizeUnknown
            : TargetTexts.DoesNotExist;
    }

    private static bool RenderingIsMeaningful(string name, Prediction prediction) =>
        name.StartsWith("lit.", StringComparison.Ordinal)
            ? prediction.RaMeaningful
            : ColourFigures.Of(prediction.Spectra.BareWPerNm).RaMeaningful;
}
