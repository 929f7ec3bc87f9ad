using GlowMix.Predictions;

namespace GlowMix.Console.Tests;

/// <summary>Verdicts made by hand, all numbers invented.</summary>
internal static class SampleTargets
{
    public static TargetVerdict Met { get; } =
        Of("lit.duv", null, -0.006, 0.025, TargetState.Met) with
        {
            Value = 0.0211,
            Margin = 0.0039,
            ShareOfDraws = 0.97,
        };

    public static TargetVerdict Missed { get; } =
        Of("lit.flux_kept_percent", null, 90, null, TargetState.Missed) with
        {
            Value = 81.6,
            Margin = -8.4,
            ShareOfDraws = 0,
        };

    public static TargetVerdict TooClose { get; } =
        Of("afterglow.luminance_mcd_m2", 60, 4, null, TargetState.TooClose) with
        {
            Value = 4.4,
            Margin = 0.4,
            ShareOfDraws = 0.68,
            DecidedBy = "a decay reading of a known layer after a known charge",
        };

    public static TargetVerdict NotJudged { get; } =
        Of("lit.ra", null, 80, null, TargetState.NotJudged) with
        {
            Reason = "this tint is beyond what CIE 13.3 colour rendering is made for",
        };

    private static TargetVerdict Of(
        string figure,
        double? atMinutes,
        double? atLeast,
        double? atMost,
        TargetState state
    ) =>
        new()
        {
            Target = new()
            {
                Figure = figure,
                AtMinutes = atMinutes,
                AtLeast = atLeast,
                AtMost = atMost,
            },
            Figure = FigureCatalogue.Find(figure, atMinutes)!,
            Value = null,
            State = state,
        };
}
