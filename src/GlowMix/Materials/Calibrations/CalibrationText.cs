using System.Globalization;
using System.Text;
using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Materials.Calibrations;

/// <summary>Writes a calibration as the text of its file, a value a line, so that two of them compare well.</summary>
public static class CalibrationText
{
    // Weaker ones move no band by a percent.
    private const double LeastCorrelation = 0.05;

    /// <summary>The text; it reads back as the same calibration, rounded to what it can mean.</summary>
    public static string Of(Calibration calibration)
    {
        ArgumentNullException.ThrowIfNull(calibration);
        var text = new Lines();
        text.Add(0, $"{CalibrationFile.FormatKey}: {CalibrationFile.Format}");
        text.Add(
            0,
            "# Written by 'glowmix fit'. A recipe takes it with 'calibration: ' and the name of this file."
        );
        text.Add(0, $"date: {calibration.Date}");
        text.Add(0, $"recipe: {ScalarText.Of(calibration.RecipeName)}");
        text.Add(0, "readings:");
        foreach (var reading in calibration.Readings)
        {
            text.Add(1, $"- file: {ScalarText.Of(reading.File)}");
            text.Add(2, $"state: {ScalarText.Of(reading.State)}");
            text.Add(2, $"sha256: {reading.Sha256}");
        }
        if (calibration.Led is { } led)
        {
            text.Add(0, "led:");
            Head(text, 1, "", led);
            Add(text, led);
        }
        if (calibration.Resin is { } resin)
        {
            text.Add(0, "resin:");
            Head(text, 1, "", resin);
            text.Number(1, "absorption_factor", resin.AbsorptionFactor);
        }
        if (!calibration.Pigments.IsEmpty)
        {
            text.Add(0, "pigments:");
            foreach (var pigment in calibration.Pigments)
            {
                Head(text, 1, "- ", pigment);
                Add(text, pigment);
            }
        }
        Add(text, calibration.Correlations);
        text.Sentences("held", calibration.Held);
        text.Sentences("misfit", calibration.Misfit);
        return text.ToString();
    }

    private static void Head(Lines text, int depth, string mark, CalibratedMaterial material)
    {
        text.Add(depth, $"{mark}material: {ScalarText.Of(material.Material)}");
        if (material.MaterialSha256 is { } hash)
        {
            text.Add(depth + (mark.Length > 0 ? 1 : 0), $"material_sha256: {hash}");
        }
    }

    private static void Add(Lines text, CalibratedLed led)
    {
        if (led.Shares is [var die, var green, var red])
        {
            text.Add(1, "shares:                    # of the bare package's watts");
            text.Number(2, "die", die);
            text.Number(2, "green", green);
            text.Number(2, "red", red);
        }
        if (!led.ReturnEntries.IsEmpty)
        {
            text.Add(1, "return_matrix:             # watts out per watt sent back onto the package");
            for (int i = 0; i < led.ReturnEntries.Length; i++)
            {
                text.Number(2, CalibratedLed.EntryKeys[i], led.ReturnEntries[i]);
            }
        }
        if (led.Conversion is { } conversion)
        {
            text.Number(1, "conversion", conversion);
        }
        if (led.BareSpectrum is { } bare)
        {
            text.Add(1, "bare_spectrum:             # power per nm, relative");
            text.Add(2, "at_nm:");
            double peak = bare.Samples.ToArray().Max();
            for (int i = 0; i < WavelengthGrid.Count; i++)
            {
                text.Add(3, $"{WavelengthGrid.NmAt(i)}: {Lines.Digits(bare[i] / peak)}");
            }
        }
    }

    private static void Add(Lines text, CalibratedPigment pigment)
    {
        if (pigment.AbsorptionFactor is { } factor)
        {
            text.Number(2, "absorption_factor", factor);
        }
        if (pigment.PhotoluminescenceYield is { } yield)
        {
            text.Number(2, "photoluminescence_yield", yield);
        }
        if (
            pigment is
            { Traps: { } traps, TrapLevel: { } level, TrapTilt: { } tilt, TrappingFactor: { } trapping }
        )
        {
            text.Add(
                2,
                "traps:                   # level, tilt and trapping_factor: against the ladder behind its sheet"
            );
            text.Number(3, "level", level);
            text.Number(3, "tilt", tilt);
            text.Number(3, "trapping_factor", trapping);
            text.Add(3, $"trapping_efficiency: {Lines.Digits(traps.TrappingEfficiencyAt20C)}");
            text.Add(3, $"read_to_min: {Lines.Digits(traps.ReachesMinutes)}");
            if (traps.MiddleMinutes is double middle)
            {
                text.Add(3, $"tilt_at_min: {Lines.Digits(middle)}");
            }
            text.Add(3, "per_g:                 # traps that empty at 1 /s, 10^-0.5 /s … 10^-6 /s at 20 °C");
            foreach (double rung in traps.PerG)
            {
                text.Add(4, $"- {Lines.Digits(rung)}");
            }
        }
    }

    private static void Add(Lines text, IReadOnlyCollection<CalibratedCorrelation> correlations)
    {
        var told = correlations.Where(c => Math.Abs(c.Value) >= LeastCorrelation).ToArray();
        if (told.Length == 0)
        {
            return;
        }
        text.Add(0, "correlations:              # of the errors above, each two once");
        foreach (var (of, with, value) in told)
        {
            text.Add(1, $"- of: {ScalarText.Of(of)}");
            text.Add(2, $"with: {ScalarText.Of(with)}");
            text.Add(2, $"value: {value.ToString("0.000", CultureInfo.InvariantCulture)}");
        }
    }

    private sealed class Lines
    {
        private readonly StringBuilder text = new();

        public static string Digits(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

        public void Add(int depth, FormattableString line) =>
            Add(depth, line.ToString(CultureInfo.InvariantCulture));

        public void Add(int depth, string line) => text.Append(' ', 2 * depth).Append(line).Append('\n');

        public void Number(int depth, string key, CalibratedNumber number)
        {
            Add(depth, key + ":");
            Add(depth + 1, $"value: {Digits(number.Value)}");
            if (number.StandardError is double error)
            {
                Add(depth + 1, $"standard_error: {error.ToString("G2", CultureInfo.InvariantCulture)}");
            }
        }

        public void Sentences(string key, IReadOnlyCollection<string> sentences)
        {
            if (sentences.Count == 0)
            {
                return;
            }
            Add(0, key + ":");
            foreach (string sentence in sentences)
            {
                Add(1, $"- {ScalarText.Of(sentence)}");
            }
        }

        public override string ToString() => text.ToString();
    }
}
