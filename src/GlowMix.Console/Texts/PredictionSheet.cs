using GlowMix.Colour;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Prints a prediction: three sentences, then the figures a maker decides by.</summary>
internal sealed class PredictionSheet(Prediction prediction, Sheet sheet)
{
    private const int MostAssumptions = 3;
    private static readonly double[] shownMinutes = [2, 10, 30, 60];

    private readonly FigureValues figures = prediction.Figures;

    /// <summary>Prints it.</summary>
    /// <param name="full">With the split by cause, all assumptions and every figure.</param>
    public void Print(bool full)
    {
        sheet.Heading(
            prediction.Title.Length == 0 || prediction.Title == prediction.Recipe
                ? prediction.Recipe
                : $"{prediction.Title} ({prediction.Recipe})"
        );
        foreach (string sentence in PredictionSentences.Of(prediction))
        {
            sheet.Paragraph(sentence);
        }
        sheet.Blank();
        LitRows();
        if (full)
        {
            ByCause();
        }
        if (prediction.Decay is not null)
        {
            GlowRows();
        }
        PieceRows();
        Rows("Along", AlongRows.Of(prediction));
        Rows("Targets", TargetRows.Of(prediction));
        Doubts(full ? int.MaxValue : MostAssumptions);
        if (full)
        {
            sheet.Blank();
            new FigureTable(prediction, sheet).Print();
        }
        sheet.Row("Caution", Cautions.OneLine);
    }

    private void Rows(string label, IEnumerable<string> texts)
    {
        foreach (string text in texts)
        {
            sheet.Row(label, text);
            label = "";
        }
    }

    private void LitRows()
    {
        White();
        double? fluxLm = figures["lit.flux_lm"];
        string lumens =
            fluxLm is double lm && figures["bare.flux_lm"] is double bareLm
                ? $": {Digits.Significant(lm, 3)} of {Digits.Significant(bareLm, 3)} lm"
                : "";
        string green = figures["lit.green_share_percent"] is > 0 and double share
            ? $"; the pigment's own light is {Digits.Percent(share)} of it"
            : "";
        sheet.Row("Light", $"{Digits.Percent(figures["lit.flux_kept_percent"])} kept{lumens}{green}");
        if (prediction.DepthOverPackagesMm > 0 && figures["lit.blue_escaped_percent"] is double escaped)
        {
            string pigment =
                prediction.Loadings.Count == 0 ? "" : $"pigment {BlueShare("absorbed_by_pigment")}, ";
            sheet.Row(
                "Blue",
                $"went to {pigment}resin {BlueShare("absorbed_by_resin")}, board {BlueShare("absorbed_by_board")}, "
                    + $"back into the packages {BlueShare("taken_back_by_package")}; {Digits.Percent(escaped)} came out"
            );
        }
    }

    private void White()
    {
        double? bareK = figures["bare.cct_k"];
        double? litK = figures["lit.cct_k"];
        string label = "White";
        if (litK is double k)
        {
            string than =
                bareK is double b && PredictionSentences.Direction(b, k) is { } direction
                    ? $", {Digits.Cct(Math.Abs(Digits.RoundedCct(k) - Digits.RoundedCct(b)))} K {direction} than the bare {Digits.Cct(b)} K"
                : bareK is not null ? ", as the bare board"
                : "";
            sheet.Row(label, $"{Digits.Cct(k)} K{Between("lit.cct_k", v => Digits.Cct(v), " K")}{than}");
            double duv = figures["lit.duv"] ?? 0;
            string bareDuv = figures["bare.duv"] is double d ? $"; bare {Digits.Duv(d)}" : "";
            sheet.Row(
                "",
                $"Duv {Digits.Duv(duv)}{Between("lit.duv", v => Digits.Duv(v), "")}, {Tint.InWords(duv)}{bareDuv}"
            );
        }
        else if (figures["lit.x"] is double x && figures["lit.y"] is double y)
        {
            sheet.Row(
                label,
                $"no colour temperature, too far from any white: {HueWord.Of(x, y)}, x {Digits.Fixed(x, 3)}, y {Digits.Fixed(y, 3)}"
            );
        }
        string bareRa = figures["bare.ra"] is double ra ? $"; bare Ra {Digits.Fixed(ra, 0)}" : "";
        sheet.Row(
            "",
            figures["lit.ra"] is double litRa && prediction.RaMeaningful
                ? $"Ra {Digits.Fixed(litRa, 0)}, R9 {(figures["lit.r9"] is double r9 ? Digits.Fixed(r9, 0) : Digits.None)}{bareRa}"
                : $"Ra not meaningful at this tint{bareRa}"
        );
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

    private void GlowRows()
    {
        sheet.Row("Glow", TableRow("mcd/m²", "low", "likely", "high"));
        foreach (double minutes in shownMinutes)
        {
            var band = prediction.BandOf(FigureCatalogue.AtMinutes("afterglow.luminance_mcd_m2", minutes));
            string after = $"{FigureCatalogue.MinutesKey(minutes)} min".PadLeft(6);
            sheet.Row(
                "",
                TableRow(after, Digits.Two(band.Low), Digits.Two(band.Likely), Digits.Two(band.High))
            );
        }
        sheet.Row("Above", MinutesRow("afterglow.minutes_to_0_3_mcd_m2", PredictionSentences.StandardLimit));
        if (prediction.LimitMcdPerM2 != 0.3)
        {
            string own = $"the recipe's {Digits.Plain(prediction.LimitMcdPerM2)} mcd/m²";
            sheet.Row("", MinutesRow("afterglow.minutes_to_limit", own));
        }
        if (figures["afterglow.x"] is double x && figures["afterglow.y"] is double y)
        {
            sheet.Row("Its colour", $"{HueWord.Of(x, y)}, x {Digits.Fixed(x, 3)}, y {Digits.Fixed(y, 3)}");
        }
        sheet.Row("Charged", prediction.ChargedBy);
        if (figures["afterglow.capacity_filled_percent"] is double filled)
        {
            string ends =
                figures["afterglow.capacity_filled_bottom_percent"] is double bottom
                && figures["afterglow.capacity_filled_surface_percent"] is double surface
                    ? $" (bottom {Digits.Percent(bottom)}, surface {Digits.Percent(surface)})"
                    : "";
            string charge = figures["afterglow.charge_minutes_to_90_percent"] is double minutes
                ? $"; nine tenths of the glow takes {Duration.Of(minutes)} of this light"
                : "";
            sheet.Row("", $"traps filled {Digits.Percent(filled)}{ends}{charge}");
        }
    }

    private void PieceRows()
    {
        string label = "Loading";
        foreach (var loading in prediction.Loadings)
        {
            sheet.Row(
                label,
                $"{loading.Layer}, {Digits.Plain(loading.DepthMm)} mm of {loading.Pigment}: "
                    + $"{Digits.Significant(loading.MassPercent, 3)} % of the mix by mass, "
                    + $"{Digits.Significant(loading.GramsPer100GResin, 3)} g per 100 g of resin, "
                    + $"{Digits.Significant(loading.VolumePercent, 2)} % by volume"
            );
            label = "";
        }
        string packages =
            prediction.DepthOverPackagesMm > 0
                ? $"{Digits.Plain(prediction.DepthOverPackagesMm)} mm over the packages"
                : "the packages stay in air: lit, nothing changes, and its own LEDs charge nothing";
        sheet.Row("Depth", $"{Digits.Plain(prediction.DepthOverBoardMm)} mm over the board, {packages}");
        Mix();
        if (prediction.TakenAs.Count > 0)
        {
            sheet.Row("Taken as", string.Join(", ", prediction.TakenAs));
        }
    }

    private void Mix()
    {
        string label = "Mix";
        if (figures["casting.part_a_g"] is double partA)
        {
            string volume = figures["casting.mix_volume_ml"] is double ml
                ? $"{Digits.Significant(ml, 3)} ml: "
                : "";
            string pigment = figures["casting.pigment_g"] is > 0 and double g
                ? $", pigment {Digits.Grams(g)}"
                : "";
            string cost = figures["casting.cost"] is double price ? $"; cost {Digits.Fixed(price, 2)}" : "";
            sheet.Row(
                label,
                $"{volume}part A {Digits.Grams(partA)}, part B {Digits.Grams(figures["casting.part_b_g"])}{pigment}{cost}"
            );
            label = "";
        }
        var pouring = new List<string>();
        if (figures["casting.viscosity_mpa_s"] is double viscosity)
        {
            pouring.Add($"{Digits.Two(viscosity)} mPa·s when mixed");
        }
        if (figures["casting.settled_mm"] is double settled)
        {
            pouring.Add($"grains settle {Digits.Two(settled)} mm");
        }
        if (figures["casting.degas_window_min"] is double window)
        {
            pouring.Add(
                window > 0 ? $"{Digits.Two(window)} min left to degas and pour" : "no time left to degas"
            );
        }
        if (pouring.Count > 0)
        {
            sheet.Row(label, string.Join("; ", pouring));
        }
    }

    private void Doubts(int mostAssumptions)
    {
        string label = "Warnings";
        foreach (var warning in prediction.Warnings)
        {
            sheet.Row(label, $"- {warning.Text}");
            label = "";
        }
        int shown = Math.Min(prediction.Assumptions.Count, mostAssumptions);
        for (int i = 0; i < shown; i++)
        {
            var assumption = prediction.Assumptions[i];
            sheet.Row(i == 0 ? "Calibrate" : "", $"{i + 1}. {assumption.What}: {assumption.Text}");
        }
        if (prediction.Assumptions.Count > shown)
        {
            sheet.Row("", $"and {prediction.Assumptions.Count - shown} more with --full");
        }
    }

    private static string TableRow(string after, string low, string likely, string high) =>
        $"{after, -8}{low, 7}{likely, 7}{high, 7}";

    private string MinutesRow(string figure, string limit) =>
        PredictionSentences.MinutesAbove(prediction.BandOf(figure), limit);

    private string BlueShare(string where) => Digits.Percent(figures[$"lit.blue_{where}_percent"]);

    // ' (3600 to 4000 K)' where the band is wider than the rounding.
    private string Between(string figure, Func<double, string> write, string unit)
    {
        var band = prediction.BandOf(figure);
        return band is { Low: double low, High: double high } && write(low) != write(high)
            ? $" ({write(low)} to {write(high)}{unit})"
            : "";
    }
}
