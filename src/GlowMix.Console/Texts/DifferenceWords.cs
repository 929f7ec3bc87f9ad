using GlowMix.Casting;
using GlowMix.Choosing.Compare;
using GlowMix.Documents;

namespace GlowMix.Console.Texts;

/// <summary>A difference between two recipes as a maker says it.</summary>
internal static class DifferenceWords
{
    private const string Silent = "not said";
    private const string OfFile = "file:";

    // The longest first: '_mcd_m2' before '_m2', '_w_m2' before '_mm'.
    private static readonly (string Ending, string Unit)[] units =
    [
        ("_mcd_m2", "mcd/m²"),
        ("_w_m2", "W/m²"),
        ("_g_cm3", "g/cm³"),
        ("_per_kg", "per kg"),
        ("_per_mm", "per mm"),
        ("_percent", "%"),
        ("_points", "points"),
        ("_minutes", "min"),
        ("_cct_k", "K"),
        ("_min", "min"),
        ("_um", "µm"),
        ("_mm", "mm"),
        ("_nm", "nm"),
        ("_lx", "lx"),
        ("_lm", "lm"),
        ("_ma", "mA"),
        ("_c", "°C"),
        ("_g", "g"),
        ("_h", "h"),
    ];

    /// <summary>'glow: pigment 20 → 25 % by mass (25 → 33.3 g per 100 g of resin)'.</summary>
    public static string Of(RecipeDifference difference)
    {
        string path = difference.KeyPath;
        if (path.StartsWith(OfFile, StringComparison.Ordinal))
        {
            string[] words = path[OfFile.Length..].Split('.', 2);
            return words.Length < 2
                ? $"{words[0]}: its own file differs"
                : $"{words[0]}, its own file: {Named(words[1], difference)}";
        }
        return path.Split('.') switch
        {
            ["title"] => $"title: {Change(difference, "")}",
            ["resin"] => $"resin: {Change(difference, "")}",
            ["board", "material"] => $"board: {Change(difference, "")}",
            ["led", "material"] => $"LED: {Change(difference, "")}",
            ["led", "count"] => $"number of LEDs: {Change(difference, "")}",
            ["led", "drive_ma"] => $"LEDs driven at {Change(difference, " mA")}",
            ["led", var key] => $"LED: {Named(key, difference)}",
            ["layers"] => $"order of the layers, from the board: {Change(difference, "")}",
            ["layers", var layer] => difference.Before is null
                ? $"a new layer '{layer}': {difference.After}"
                : $"no layer '{layer}' any more: it was {difference.Before}",
            ["layers", var layer, "depth_mm"] => $"{layer}: {Change(difference, " mm")} deep",
            ["layers", var layer, "loading_percent"] => $"{layer}: {Loading(difference)}",
            ["layers", var layer, "pigment"] => $"{layer}: {Pigment(difference)}",
            ["layers", var layer, var key] => $"{layer}: {Named(key, difference)}",
            ["charge", "start"] => $"charge: starts {Change(difference, "")}",
            ["charge", "steps", var number] => difference.Before is null
                ? $"charge: a new step {number}, {difference.After}"
                : $"charge: no step {number} any more, it was {difference.Before}",
            ["charge", "steps", var number, var key] => $"charge, step {number}: {Named(key, difference)}",
            ["targets", ..] => Target(difference),
            ["darkness", var key] => $"darkness: {Named(key, difference)}",
            ["balance", ..] => "what 'balance' searches",
            ["pour", var key] => $"channel: {Named(key, difference)}",
            [_, var key] => Named(key, difference),
            _ => Named(difference.Name, difference),
        };
    }

    /// <summary>What a single exchange is, in a few words: 'glow, loading'.</summary>
    public static string OfExchange(string key) =>
        key switch
        {
            Comparison.Together => "their interaction",
            "led" => "LED",
            "led.drive_ma" => "drive",
            "size" => "size, number of LEDs",
            "pour.runs_out_mm" => "how it runs out",
            "pour.face" => "side up while it gels",
            "darkness" => "darkness",
            _ => key.Split('.') is ["layers", var layer, var what]
                ? $"{layer}, {Stem(what).Name.Replace('_', ' ')}"
                : key.Replace('_', ' '),
        };

    private static string Loading(RecipeDifference difference)
    {
        string percent = $"pigment {Change(difference, " %")} by mass";
        return Grams(difference.Before) is { } before && Grams(difference.After) is { } after
            ? $"{percent} ({before} → {after} g per 100 g of resin)"
            : percent;
    }

    private static string? Grams(string? percent) =>
        percent is not null && NumberText.TryRead(percent, out double p) && p is >= 0 and < 100
            ? Digits.Significant(PigmentLoading.FromPercentByMass(p).GPer100GResin, 3)
            : null;

    private static string Pigment(RecipeDifference difference) =>
        difference switch
        {
            { Before: null } => $"now with {difference.After}, was clear",
            { After: null } => $"now clear, was with {difference.Before}",
            _ => $"pigment {Change(difference, "")}",
        };

    private static string Target(RecipeDifference difference)
    {
        string what = difference.KeyPath["targets.".Length..];
        return difference switch
        {
            { Before: null } => $"a new target: {what} {difference.After}",
            { After: null } => $"a target less: {what} {difference.Before}",
            _ => $"target {what}: {Change(difference, "")}",
        };
    }

    private static string Named(string key, RecipeDifference difference)
    {
        var (name, unit) = Stem(key);
        return $"{name.Replace('_', ' ')} {Change(difference, unit.Length > 0 ? " " + unit : "")}";
    }

    private static (string Name, string Unit) Stem(string key)
    {
        foreach (var (ending, unit) in units)
        {
            if (key.EndsWith(ending, StringComparison.Ordinal))
            {
                return (key[..^ending.Length], unit);
            }
        }
        return (key, "");
    }

    // The unit is said once, behind the last number there is.
    private static string Change(RecipeDifference difference, string unit) =>
        (difference.Before, difference.After) switch
        {
            ({ } before, { } after) => $"{before} → {after}{unit}",
            (null, { } after) => $"{Silent} → {after}{unit}",
            ({ } before, null) => $"{before}{unit} → {Silent}",
            _ => "",
        };
}
