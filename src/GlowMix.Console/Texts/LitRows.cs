using GlowMix.Colour;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>The lit piece: its white, its light, where the blue went.</summary>
internal sealed class LitRows(Prediction prediction, IRowSheet sheet)
{
    private readonly FigureValues figures = prediction.Figures;

    /// <summary>Prints them.</summary>
    /// <param name="full">With the shift split by its causes.</param>
    public void Print(bool full)
    {
        White();
        Rendering();
        if (full)
        {
            ByCause();
        }
        Light();
        Blue();
    }

    private void White()
    {
        double? bareK = figures["bare.cct_k"];
        if (figures["lit.cct_k"] is double k)
        {
            string than = bareK switch
            {
                double b when PredictionSentences.Direction(b, k) is { } direction =>
                    $", {Digits.Cct(Math.Abs(Digits.RoundedCct(k) - Digits.RoundedCct(b)))} K {direction} than the bare {Digits.Cct(b)} K",
                not null => ", as the bare board",
                null => "",
            };
            sheet.Row("White", $"{Digits.Cct(k)} K{Between("lit.cct_k", v => Digits.Cct(v), " K")}{than}");
            double duv = figures["lit.duv"] ?? 0;
            string bareDuv = figures["bare.duv"] is double d ? $"; bare {Digits.Duv(d)}" : "";
            sheet.Row(
                "",
                $"Duv {Digits.Duv(duv)}{Between("lit.duv", v => Digits.Duv(v), "")}, {Tint.InWords(duv)}{bareDuv}"
            );
        }
        else if (figures["lit.x"] is double x && figures["lit.y"] is double y)
        {
            string bare = bareK is double b ? $"; bare {Digits.Cct(b)} K" : "";
            sheet.Row(
                "White",
                $"none: {HueWord.Of(x, y)}, x {Digits.Fixed(x, 3)}, y {Digits.Fixed(y, 3)}{bare}"
            );
        }
    }

    private void Rendering()
    {
        string bare = figures["bare.ra"] is double bareRa ? $"; bare Ra {Digits.Fixed(bareRa, 0)}" : "";
        string lit = figures["lit.ra"] switch
        {
            double ra when prediction.RaMeaningful =>
                $"Ra {Digits.Fixed(ra, 0)}, R9 {(figures["lit.r9"] is double r9 ? Digits.Fixed(r9, 0) : Digits.None)}",
            double ra => $"Ra {Digits.Fixed(ra, 0)}, not meaningful at this tint",
            null => "no Ra at this tint",
        };
        sheet.Row("", lit + bare);
    }

    private void Light()
    {
        string lumens =
            figures["lit.flux_lm"] is double lm && figures["bare.flux_lm"] is double bareLm
                ? $", {Digits.Significant(lm, 3)} of {Digits.Significant(bareLm, 3)} lm"
                : "";
        string pigment = figures["lit.green_share_percent"] is > 0 and double share
            ? $"; {Digits.Percent(share)} is the pigment's own"
            : "";
        sheet.Row(
            "Light",
            $"{Digits.Percent(figures["lit.flux_kept_percent"])} of the bare board's{lumens}{pigment}"
        );
    }

    private void Blue()
    {
        if (prediction.DepthOverPackagesMm > 0 && figures["lit.blue_escaped_percent"] is double escaped)
        {
            string pigment = prediction.Loadings.All(l => l.MassPercent == 0)
                ? ""
                : $"pigment {Share("absorbed_by_pigment")}, ";
            sheet.Row(
                "Blue to",
                $"{pigment}resin {Share("absorbed_by_resin")}, board {Share("absorbed_by_board")}, "
                    + $"packages {Share("taken_back_by_package")}; {Digits.Percent(escaped)} comes out"
            );
        }
    }

    private void ByCause()
    {
        string label = "By cause";
        foreach (string cause in FigureCatalogue.Causes)
        {
            double? kelvin = figures[$"lit.shift_by_cause_k.{cause}"];
            double? uPrime = figures[$"lit.shift_by_cause_u_prime.{cause}"];
            double? vPrime = figures[$"lit.shift_by_cause_v_prime.{cause}"];
            if (kelvin is null && uPrime is null)
            {
                continue;
            }
            string text = kelvin switch
            {
                null => "no CCT",
                double k when Digits.RoundedCct(k) == 0 => "no shift",
                double k => $"{Digits.Cct(Math.Abs(k))} K {PredictionSentences.Direction(0, k)}",
            };
            string place =
                uPrime is double u && vPrime is double v
                    ? $", u′ {Digits.Signed(u, 4)}, v′ {Digits.Signed(v, 4)}"
                    : "";
            sheet.Row(label, $"{cause.Replace('_', ' ')}: {text}{place}");
            label = "";
        }
    }

    private string Share(string where) => Digits.Percent(figures[$"lit.blue_{where}_percent"]);

    // ' (3600 to 4000 K)' where the band is wider than the rounding.
    private string Between(string figure, Func<double, string> write, string unit)
    {
        var band = prediction.BandOf(figure);
        return band is { Low: double low, High: double high } && write(low) != write(high)
            ? $" ({write(low)} to {write(high)}{unit})"
            : "";
    }
}
