using GlowMix.Choosing.Compare;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>What becomes of a figure, in units and words: '+12 % (+8 to +16), brighter'.</summary>
internal static class ChangeWords
{
    /// <summary>What stands where nothing shows.</summary>
    public const string NoChange = "-";

    private const double LargestPercent = 200;
    private const double LeastFactor = 1.2;
    private const double MuchBetter = 0.5;

    // A step of colour along a piece that nobody sees.
    private const double UnseenStep = 0.0005;
    private const int MassDigits = 3;

    /// <summary>How a figure is called here.</summary>
    public static string NameOf(Figure figure) =>
        figure.Family switch
        {
            "lit.cct_k" => "white",
            "lit.duv" => "Duv",
            "lit.ra" => "Ra",
            "lit.r9" => "R9",
            "lit.flux_kept_percent" => "light kept",
            "lit.flux_lm" => "light",
            "lit.green_share_percent" => "pigment's part",
            "along_largest_step_u_prime_v_prime" => "colour along it",
            "afterglow.luminance_mcd_m2" =>
                $"glow at {FigureCatalogue.MinutesKey(figure.AtMinutes!.Value)} min",
            "afterglow.minutes_to_0_3_mcd_m2" => "above 0.3 mcd/m²",
            "afterglow.minutes_to_limit" => "above the limit",
            "casting.mix_volume_ml" => "mix",
            "casting.part_a_g" => "part A",
            "casting.part_b_g" => "part B",
            "casting.pigment_g" => "pigment",
            "casting.pigment_g_per_100g_resin" => "in 100 g of resin",
            "casting.viscosity_mpa_s" => "viscosity",
            "casting.settled_mm" => "grains settle",
            "casting.degas_window_min" => "time to pour",
            "casting.cost" => "cost",
            _ => figure.Name,
        };

    /// <summary>A value with its unit.</summary>
    public static string Value(Figure figure, double? value) =>
        value is not { } v ? Digits.None
        : IsDuration(figure) ? (v == 0 ? "never" : Duration.Of(v))
        : figure.Name == "lit.flux_kept_percent" ? Digits.Percent(v)
        : $"{FigureDigits.Text(figure, v)}{UnitOf(figure)}";

    /// <summary>A value with its band where that is wider than the digits.</summary>
    public static string Banded(Figure figure, Band band)
    {
        string likely = Value(figure, band.Likely);
        if (!Comparison.IsByRatio(figure) || band is not { Low: { } low, High: { } high })
        {
            return likely;
        }
        string from = Value(figure, low);
        string to = Value(figure, high);
        // One unit is said once.
        int unit = to.IndexOf(' ', StringComparison.Ordinal);
        if (
            unit > 0
            && from.EndsWith(to[unit..], StringComparison.Ordinal)
            && likely.EndsWith(to[unit..], StringComparison.Ordinal)
        )
        {
            (from, to) = (from[..^(to.Length - unit)], to[..unit]);
        }
        return from == to ? likely : $"{likely} ({from} to {to})";
    }

    /// <summary>What becomes of it, such as '+12 % (+8 to +16)'; null where nothing shows at the digits it is worth.</summary>
    public static string? Of(FigureChange change)
    {
        var figure = change.Figure;
        if (change.Before.Likely is not { } before || change.After.Likely is null)
        {
            return change.After.Likely is null ? "no longer there" : "new";
        }
        if (change.Ratio is { Likely: { } } ratio)
        {
            return Ratio(ratio);
        }
        if (figure.Name == "lit.flux_lm" && before > 0)
        {
            return Ratio(
                new(
                    1 + (change.Change.Low / before),
                    1 + (change.Change.Likely / before),
                    1 + (change.Change.High / before)
                )
            );
        }
        if (
            figure.Name.StartsWith("casting.", StringComparison.Ordinal)
            && Value(figure, before) == Value(figure, change.After.Likely)
        )
        {
            return null;
        }
        return figure.Name switch
        {
            "along_largest_step_u_prime_v_prime" when Math.Abs(change.Change.Likely!.Value) < UnseenStep =>
                null,
            "lit.cct_k" => Steps(change, v => Digits.Signed(Digits.RoundedCct(v), 0), " K"),
            "lit.duv" => Steps(change, v => Digits.Signed(v, 3), ""),
            "lit.flux_kept_percent" => Steps(change, v => Digits.Signed(v, 0), " points"),
            "lit.ra" or "lit.r9" => Steps(change, v => Digits.Signed(v, 0), ""),
            _ => Steps(change, Signed, UnitOf(figure)),
        };
    }

    /// <summary>Which way a figure went: 'cooler (bluer)', 'dimmer'; empty where nothing shows, or more is neither.</summary>
    public static string Way(FigureChange change)
    {
        if (change.Change.Likely is not { } moved || Of(change) is null)
        {
            return "";
        }
        var (more, less) = change.Figure.Name switch
        {
            "lit.cct_k" => ("cooler (bluer)", "warmer (yellower)"),
            "lit.duv" => ("greener", "pinker"),
            _ when IsDuration(change.Figure) => ("longer", "shorter"),
            _ when Comparison.IsByRatio(change.Figure)
                    || change.Figure.Name.Contains("flux", StringComparison.Ordinal) => (
                "brighter",
                "dimmer"
            ),
            _ => ("", ""),
        };
        return moved > 0 ? more : less;
    }

    /// <summary>One change alone, for the table of causes.</summary>
    public static string Alone(Figure figure, double? change)
    {
        if (change is not { } c)
        {
            return Digits.None;
        }
        string text =
            Comparison.IsByRatio(figure) ? Percent(c)
            : figure.Name == "lit.cct_k" ? Digits.Signed(Digits.RoundedCct(c), 0)
            : figure.Name == "lit.duv" ? Digits.Signed(c, 3)
            : Digits.Signed(c, 0);
        return IsNothing(text) ? NoChange : text;
    }

    /// <summary>'a factor of 1.9': how well a figure itself is known; null where that is well, or no worse than its change is.</summary>
    public static string? KnownTo(FigureChange change)
    {
        double factor = Math.Max(FactorOf(change.Before), FactorOf(change.After));
        bool isChangeKnownBetter =
            change.Ratio is { } ratio && Math.Log(FactorOf(ratio)) < MuchBetter * Math.Log(factor);
        return factor >= LeastFactor && isChangeKnownBetter ? $"a factor of {Digits.Two(factor)}" : null;
    }

    private static double FactorOf(Band band) =>
        band is { Low: > 0 and { } low, High: { } high } ? Math.Sqrt(high / low) : 1;

    private static string? Ratio(Band ratio)
    {
        double likely = ratio.Likely!.Value;
        double[] all = [ratio.Low ?? likely, likely, ratio.High ?? likely];
        // Percent, or factors where one of them is large.
        if (all.Max() > 1 + (LargestPercent / 100))
        {
            string[] factors = Array.ConvertAll(all, r => Digits.Two(r));
            return $"×{factors[1]}{(factors[0] == factors[2] ? "" : $" (×{factors[0]} to ×{factors[2]})")}";
        }
        string[] percents = Array.ConvertAll(all, Percent);
        return percents[1] == "0"
            ? null
            : $"{percents[1]} %{(percents[0] == percents[2] ? "" : $" ({percents[0]} to {percents[2]})")}";
    }

    // '+12', '-4', '0'; from three times on as a factor.
    private static string Percent(double ratio)
    {
        double percent = 100 * (ratio - 1);
        return percent > LargestPercent ? $"×{Digits.Two(ratio)}"
            : Math.Abs(percent) is >= 0.05 and < 1 ? Digits.Signed(percent, 1)
            : Digits.Signed(percent, 0);
    }

    private static string? Steps(FigureChange change, Func<double, string> write, string unit)
    {
        double likely = change.Change.Likely!.Value;
        string middle = write(likely);
        if (IsNothing(middle))
        {
            return null;
        }
        string low = write(change.Change.Low ?? likely);
        string high = write(change.Change.High ?? likely);
        return $"{middle}{unit}{(low == high ? "" : $" ({low} to {high})")}";
    }

    private static bool IsNothing(string number) => number.All(c => c is '0' or '.' or '+' or '-');

    private static string Signed(double value) =>
        value > 0 ? "+" + Digits.Significant(value, MassDigits) : Digits.Significant(value, MassDigits);

    private static bool IsDuration(Figure figure) =>
        figure.Name.StartsWith("afterglow.minutes_to", StringComparison.Ordinal);

    private static string UnitOf(Figure figure) =>
        figure.Unit.Length == 0 ? ""
        : figure.Name == "casting.pigment_g_per_100g_resin" ? " g"
        : " " + figure.Unit;
}
