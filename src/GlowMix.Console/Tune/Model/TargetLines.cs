using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Model;

/// <summary>The recipe's targets, two short lines each.</summary>
internal static class TargetLines
{
    /// <summary>What is wanted, how it stands, and whether it is met.</summary>
    public static IEnumerable<(string Name, string Bounds, string How, TargetState State)> Of(
        Prediction prediction
    )
    {
        foreach (var verdict in prediction.Targets)
        {
            string name = verdict.Target.AtMinutes is double minutes
                ? $"{Short(verdict.Figure.Family)} at {Digits.Plain(minutes)} min"
                : Short(verdict.Figure.Name);
            string bounds = (verdict.Target.AtLeast, verdict.Target.AtMost) switch
            {
                (double least, double most) => $"{Digits.Plain(least)} to {Digits.Plain(most)}",
                (double least, null) => $"at least {Digits.Plain(least)}",
                (null, double most) => $"at most {Digits.Plain(most)}",
                _ => "",
            };
            string margin = verdict.Margin is double m
                ? $", {Digits.Significant(Math.Abs(m), 2)} {(m >= 0 ? "inside" : "outside")}"
                : "";
            string how = verdict.State switch
            {
                TargetState.Met => "met" + margin,
                TargetState.Missed => "missed" + margin,
                TargetState.TooClose => "too close" + margin,
                _ => $"not judged: {verdict.Reason}",
            };
            yield return (name, bounds, how, verdict.State);
        }
    }

    // The figure's own name without the part that the place on the screen says.
    private static string Short(string name)
    {
        string last = name[(name.IndexOf('.') + 1)..];
        return last.Replace('_', ' ').Replace("mcd m2", "", StringComparison.Ordinal).TrimEnd();
    }
}
