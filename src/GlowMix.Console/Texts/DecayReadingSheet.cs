using GlowMix.Readings;
using GlowMix.Readings.Decay;

namespace GlowMix.Console.Texts;

/// <summary>Prints what a decay reading says.</summary>
internal sealed class DecayReadingSheet(
    DecayFigures figures,
    MeterGeometry? geometry,
    DecayAgainstPrediction? predicted,
    Sheet sheet
)
{
    private const int MostRows = 12;

    private readonly DecayReading reading = figures.Reading;

    /// <summary>Prints it.</summary>
    public void Print()
    {
        sheet.Heading(reading.File);
        sheet.Paragraph(Sentence());
        if (predicted is not null)
        {
            sheet.Paragraph(AgainstRecipeRows.Sentence(predicted));
        }
        sheet.Blank();
        if (predicted is not null)
        {
            AgainstRecipeRows.Print(predicted, sheet);
        }
        if (figures.Exponent is { } exponent)
        {
            sheet.Row(
                "Fall",
                $"as t^-{Digits.Fixed(exponent, 2)} (± {Digits.Fixed(figures.ExponentError ?? 0, 2)}, one standard error) over {Digits.Plain(figures.Usable.Length)} readings"
            );
        }
        if (reading.Unit == DecayUnit.McdPerM2)
        {
            sheet.Row(
                "0.3 mcd/m²",
                figures.MinutesToLimit switch
                {
                    null => "cannot be told from these readings",
                    0 => "never above it",
                    { } minutes =>
                        $"reached after {Duration.Of(minutes)}{(figures.IsExtrapolated ? ", beyond the readings" : "")}",
                }
            );
        }
        Readings();
        if (geometry is not null)
        {
            sheet.Row(
                "Geometry",
                $"{geometry.Words}: 1 lx is {Digits.Significant(geometry.McdPerM2PerLux, 3)} mcd/m²"
            );
        }
        if (reading.DisplayStep > 0)
        {
            sheet.Row(
                "Display",
                $"steps of {Digits.Significant(reading.DisplayStep, 2)} {Unit}; used from {Digits.Significant(DecayReading.LeastSteps * reading.DisplayStep, 2)} {Unit} on"
            );
        }
        sheet.Row("Found", FindingsWords.Of(reading.Findings));
        string label = "Warnings";
        foreach (var warning in figures.Warnings)
        {
            sheet.Row(label, warning.Text);
            label = "";
        }
    }

    private string Unit =>
        reading.Unit switch
        {
            DecayUnit.McdPerM2 => "mcd/m²",
            DecayUnit.Lux => "lx",
            _ => "units",
        };

    private string Sentence()
    {
        if (figures.Usable.IsEmpty)
        {
            return "Nothing to use: every reading in the dark is under 5 steps of the display.";
        }
        int first = figures.Usable[0];
        int last = figures.Usable[^1];
        string course = $"{Value(first)} after {Minutes(first)}, {Value(last)} after {Minutes(last)}";
        return figures.MinutesToLimit switch
        {
            > 0 and var minutes =>
                $"{course}; 0.3 mcd/m² {(figures.IsExtrapolated ? "to be expected" : "reached")} after {Duration.Of(minutes)}.",
            0 => $"{course}; never above 0.3 mcd/m².",
            _ => $"{course}.",
        };
    }

    // Evenly taken where there are many.
    private void Readings()
    {
        string label = "Readings";
        double step = Math.Max(1, (figures.Usable.Length - 1.0) / (MostRows - 1));
        for (double at = 0; at <= figures.Usable.Length - 1 + 1e-9; at += step)
        {
            int i = figures.Usable[(int)Math.Round(at)];
            sheet.Row(label, $"{Minutes(i)}: {Value(i)}");
            label = "";
        }
    }

    private string Value(int i) => $"{Digits.Significant(reading.Values[i], 3)} {Unit}";

    private string Minutes(int i) => $"{Digits.Significant(reading.Minutes[i], 3)} min";
}
