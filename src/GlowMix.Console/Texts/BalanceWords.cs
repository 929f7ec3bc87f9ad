using GlowMix.Choosing;
using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Console.Texts;

/// <summary>The parts of a search's answer in words.</summary>
internal static class BalanceWords
{
    private const int KeptDigits = 3;

    /// <summary>'layers.glow.depth_mm 1 to 4', 'layers.glow.pigment green-aluminate or blue-green-aluminate'.</summary>
    public static string Offer(RecipeChoice choice) =>
        choice.AnyOf.IsEmpty
            ? $"{choice.KeyPath} {Digits.Plain(choice.From!.Value)} to {Digits.Plain(choice.To!.Value)}"
            : $"{choice.KeyPath} {string.Join(" or ", choice.AnyOf)}";

    /// <summary>A value of a choice, shortened if it is a number.</summary>
    public static string Value(string value) =>
        NumberText.TryRead(value, out double number) ? Digits.Significant(number, 6) : value;

    /// <summary>'loading_percent 14, depth_mm 2'.</summary>
    public static string Choices(IEnumerable<KeyValuePair<string, string>> choices) =>
        string.Join(", ", choices.Select(c => $"{c.Key} {Value(c.Value)}"));

    /// <summary>'lit.duv, at most 0.02'.</summary>
    public static string Target(RecipeTarget target) => $"{FigureOf(target)} {Bounds(target)}";

    /// <summary>The figure of a target: 'afterglow.luminance_mcd_m2 at 60 min'.</summary>
    public static string FigureOf(RecipeTarget target) =>
        target.AtMinutes is double minutes
            ? $"{target.Figure} at {Digits.Plain(minutes)} min"
            : target.Figure;

    /// <summary>What limits there are, or none.</summary>
    public static string Limits(IReadOnlyCollection<BalanceLimit> limits, string none) =>
        limits.Count == 0
            ? none
            : string.Join(
                "; ",
                limits.Select(l =>
                    l.Target is { } target
                        ? $"the target {Target(target)}"
                        : $"{l.KeyPath} ends at {Digits.Plain(l.EndsAt!.Value)}"
                )
            );

    /// <summary>What a target would have to be: 'lit.duv at most 0.0254 instead of 0.02'.</summary>
    public static string Relaxed(BalanceRelaxation relaxation)
    {
        var target = relaxation.Target;
        var (word, bound, up) =
            relaxation.To < target.AtLeast
                ? ("at least", target.AtLeast.Value, false)
                : ("at most", target.AtMost!.Value, true);
        return $"{FigureOf(target)} {word} {Outward(relaxation.To, up)} instead of {Digits.Plain(bound)}";
    }

    private static string Bounds(RecipeTarget target) =>
        (target.AtLeast, target.AtMost) switch
        {
            (double least, double most) => $"{Digits.Plain(least)} to {Digits.Plain(most)}",
            (double least, null) => $"at least {Digits.Plain(least)}",
            (null, double most) => $"at most {Digits.Plain(most)}",
            _ => "",
        };

    // Rounded so that the value itself still meets it.
    private static string Outward(double value, bool up)
    {
        if (value == 0)
        {
            return "0";
        }
        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) + 1 - KeptDigits);
        double steps = value / step;
        return Digits.Plain((up ? Math.Ceiling(steps) : Math.Floor(steps)) * step);
    }
}
