using System.Globalization;
using GlowMix.Readings.Fit;

namespace GlowMix.Console.Texts;

/// <summary>Prints a fit: what the readings told, what they did not, and how well the model follows them.</summary>
/// <param name="result">The fit.</param>
/// <param name="readingCount">Readings it rests on, the bare one with them.</param>
/// <param name="sheet">Where to.</param>
internal sealed class FitSheet(FitResult result, int readingCount, Sheet sheet)
{
    // Two numbers this strongly correlated are hardly told apart, though each has an error of its own.
    private const double TellCorrelation = 0.9;

    private const int Digits3 = 3;

    /// <summary>Prints it.</summary>
    /// <param name="recipe">The recipe's name.</param>
    /// <param name="written">The calibration's file; null if none was written.</param>
    /// <param name="isTaken">The recipe names it already.</param>
    public void Print(string recipe, string? written, bool isTaken)
    {
        sheet.Heading(recipe);
        int told = result.Numbers.Length + (result.Shares.IsEmpty ? 0 : 1);
        sheet.Paragraph(
            told == 0
                ? $"{Readings()} told nothing that the materials' files do not say better."
                : $"{Readings()} told {Count(result.Numbers.Length, "number")}"
                    + $"{(result.Shares.IsEmpty ? "" : " and the bands of the LED")}; {result.Held.Length} held as the files have them."
        );
        sheet.Blank();
        Rows("Told", result.Numbers.Select(Told));
        Rows("LED", result.Shares.Select(Told));
        Rows("Held", result.Held.Select(FitTexts.HeldBecause));
        Rows("Together", Together());
        Rows("Follows", result.Misfits.Select(Follows));
        Rows("Warnings", Warnings());
        if (written is not null)
        {
            string file = Path.GetFileName(written);
            sheet.Row(
                "Written",
                isTaken
                    ? $"{written}, which the recipe takes"
                    : $"{written}; put 'calibration: {file}' into the recipe, and predict again"
            );
        }
    }

    private string Readings() => Count(readingCount, "reading");

    private void Rows(string label, IEnumerable<string> texts)
    {
        foreach (string text in texts)
        {
            sheet.Row(label, text);
            label = "";
        }
    }

    private static string Told(FittedNumber number)
    {
        string error = Digits.Significant(number.StandardError, 2);
        string value = number.Value.ToString(
            "0." + new string('0', Math.Max(0, error.Length - error.IndexOf('.') - 1)),
            CultureInfo.InvariantCulture
        );
        bool isFactor =
            number.Key.EndsWith("_factor", StringComparison.Ordinal)
            || number.Key.EndsWith(".trap_level", StringComparison.Ordinal);
        return isFactor
            ? $"{number.Words}: × {value} ± {error}"
            : $"{number.Words}: {value} ± {error}, was {Digits.Significant(number.Start, Digits3)}";
    }

    private IEnumerable<string> Together()
    {
        for (int i = 0; i < result.Numbers.Length; i++)
        {
            for (int j = i + 1; j < result.Numbers.Length; j++)
            {
                double r = result.Correlations[i][j];
                if (Math.Abs(r) >= TellCorrelation)
                {
                    yield return string.Create(
                        CultureInfo.InvariantCulture,
                        $"{result.Numbers[i].Words} and {result.Numbers[j].Words}: correlation {r:0.00}"
                    );
                }
            }
        }
    }

    private static string Follows(ReadingMisfit misfit)
    {
        string noise = Digits.Significant(misfit.NoisePercent, 2);
        string off = Digits.Significant(misfit.RmsPercent, 2);
        return misfit.IsLackOfFit
            ? $"{misfit.Name} ({misfit.State}): off by {off} %, {Digits.Significant(misfit.TimesItsNoise, 2)} times its noise: the model lacks something; worst {Worst(misfit)}"
            : $"{misfit.Name} ({misfit.State}): off by {off} %, as its noise of {noise} % has it";
    }

    private static string Worst(ReadingMisfit misfit)
    {
        var (at, percent) = misfit.ResidualsPercent.MaxBy(r => Math.Abs(r.Percent));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{percent:+0.#;-0.#} % at {at:0.#} {(misfit.IsDecay ? "min" : "nm")}"
        );
    }

    private IEnumerable<string> Warnings()
    {
        foreach (string warning in result.Warnings)
        {
            yield return warning;
        }
        if (result.ErrorsWidenedBy > 1.1)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"all errors widened {result.ErrorsWidenedBy:0.0} times, as the model does not follow the readings to their noise"
            );
        }
    }

    private static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
