using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>The dark piece: colour and course of its glow, and the charge before.</summary>
internal sealed class GlowRows(Prediction prediction, Sheet sheet)
{
    private readonly FigureValues figures = prediction.Figures;

    /// <summary>Prints them.</summary>
    /// <param name="full">With how far the traps are filled.</param>
    public void Print(bool full)
    {
        sheet.Row("Glow", Colour());
        new GlowTable(prediction, sheet).Print();
        sheet.Row("Charged", prediction.ChargedBy);
        if (full && figures["afterglow.capacity_filled_percent"] is double filled)
        {
            Traps(filled);
        }
    }

    private string Colour()
    {
        string pigments = "";
        var seen = new HashSet<string>();
        foreach (var loading in prediction.Loadings)
        {
            if (seen.Add(loading.Pigment))
            {
                pigments += $"{(pigments.Length > 0 ? " and " : "")}{loading.Pigment}";
            }
        }
        return figures["afterglow.x"] is double x && figures["afterglow.y"] is double y
            ? $"{HueWord.Of(x, y)} (x {Digits.Fixed(x, 3)}, y {Digits.Fixed(y, 3)}) of {pigments}"
            : $"none of {pigments}";
    }

    private void Traps(double filledPercent)
    {
        string ends =
            figures["afterglow.capacity_filled_bottom_percent"] is double bottom
            && figures["afterglow.capacity_filled_surface_percent"] is double surface
                ? $" (bottom {Digits.Percent(bottom)}, surface {Digits.Percent(surface)})"
                : "";
        string charge = figures["afterglow.charge_minutes_to_90_percent"] is double minutes
            ? $"; the last light needs {Duration.Of(minutes)} for nine tenths of all it can do"
            : "";
        sheet.Row("", $"traps filled {Digits.Percent(filledPercent)}{ends}{charge}");
    }
}
