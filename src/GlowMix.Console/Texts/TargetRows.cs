using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>A recipe's targets with what the prediction says of them, a sentence each.</summary>
internal static class TargetRows
{
    private const int DigitsShown = 3;

    /// <summary>'lit.duv, -0.006 to 0.02: met in all draws, 0.0038 inside'.</summary>
    public static IEnumerable<string> Of(Prediction prediction) => prediction.Targets.Select(Of);

    /// <summary>How a verdict is called, also in JSON.</summary>
    public static string WordOf(TargetState state) => state.Word();

    /// <summary>One of them.</summary>
    public static string Of(TargetVerdict verdict)
    {
        string name = verdict.Target.AtMinutes is double minutes
            ? $"{verdict.Figure.Family} at {Digits.Plain(minutes)} min"
            : verdict.Figure.Name;
        string what = $"{name}, {Bounds(verdict)}: ";
        string unit = verdict.Figure.Unit.Length > 0 ? " " + verdict.Figure.Unit : "";
        if (verdict.State == TargetState.NotJudged)
        {
            return what + $"not judged, {verdict.Reason}";
        }
        string margin =
            $"{Number(Math.Abs(verdict.Margin ?? 0))}{unit} {(verdict.Margin < 0 ? "outside" : "inside")}";
        string deciding = verdict.DecidedBy is { } reading ? $"; to decide: {reading}" : "";
        return what
            + (verdict.State, verdict.ShareOfDraws) switch
            {
                (TargetState.Met, double share) => $"met in {OfTen(share)}, {margin}",
                (TargetState.Met, null) => $"met, {margin}",
                (TargetState.Missed, 0) => $"missed in all draws, {margin}",
                (TargetState.Missed, double share) => $"missed, met in {OfTen(share)}, {margin}",
                (TargetState.Missed, null) => $"missed, {margin}",
                (_, var share) => $"too close to call, {(share is double s ? $"met in {OfTen(s)}, " : "")}"
                    + $"{margin}{deciding}",
            };
    }

    /// <summary>'7 of 10 draws', and no more certain than the draws are.</summary>
    internal static string OfTen(double share) =>
        Math.Round(10 * share) switch
        {
            0 => share == 0 ? "no draw" : "under 1 of 10 draws",
            10 => share == 1 ? "all draws" : "over 9 of 10 draws",
            double tenths => $"{Digits.Fixed(tenths, 0)} of 10 draws",
        };

    private static string Bounds(TargetVerdict verdict) =>
        (verdict.Target.AtLeast, verdict.Target.AtMost) switch
        {
            (double least, double most) => $"{Digits.Plain(least)} to {Digits.Plain(most)}",
            (double least, null) => $"at least {Digits.Plain(least)}",
            (null, double most) => $"at most {Digits.Plain(most)}",
            _ => "",
        };

    private static string Number(double? value) =>
        value is double v ? Digits.Significant(v, DigitsShown) : Digits.None;
}
