using System.Globalization;

namespace GlowMix.Choosing;

/// <summary>The words of what keeps a search for a balance from beginning.</summary>
public static class BalanceTexts
{
    /// <summary>Nothing to turn.</summary>
    public const string NothingToTurn =
        "nothing to search: the recipe has no pigmented layer; say under 'balance' which 'choices' may be turned, "
        + "such as the depth_mm of a layer";

    /// <summary>Pigmented layers without any pigment.</summary>
    public const string NothingLoaded =
        "nothing to search: with a loading of 0 there is no half and no double of it; say under 'balance' which 'choices' "
        + "may be turned";

    /// <summary>Too few or too many steps.</summary>
    public static string StepCount(double steps) =>
        Invariant($"{steps} steps; allowed: a whole number, {Balance.FewestSteps} to {Balance.MostSteps}");

    /// <summary>More designs than anyone waits for.</summary>
    public static string TooManyDesigns(double designs, int steps) =>
        Invariant(
            $"the choices make {designs:0} designs with {steps} steps a range; allowed: up to {Balance.MostDesigns}; offer fewer choices"
        );

    /// <summary>The recipe refuses a value that it offers.</summary>
    public static string Refused(string where, string reason) => $"the choice of {where}: {reason}";

    /// <summary>A key and its value, as a recipe writes them.</summary>
    public static string At(string keyPath, string value) => $"{keyPath} {value}";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
