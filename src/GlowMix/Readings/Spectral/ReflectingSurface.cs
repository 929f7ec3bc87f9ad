using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>
/// Divides out the paper or diffuser that the light was read off. Reading off white paper is common practice (no source);
/// the brightener in it glows under violet.
/// </summary>
public static class ReflectingSurface
{
    private const double BrightenerBelowNm = 430;
    private const double LeastShare = 1e-3;
    private const double LeastReflectance = 0.02;

    /// <summary>Divides out one number for all wavelengths: the colour stays, the level changes.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="reflectance">Share sent back, above 0 up to 1.</param>
    public static ReadingStep Divide(SpectralReading reading, double reflectance) =>
        reflectance is > 0 and <= 1
            ? ReadingStep.Done(
                WarnPaper(
                    reading with
                    {
                        Spectrum = OtherGrid.Changed(reading.Spectrum, (_, value) => value / reflectance),
                    }
                )
            )
            : ReadingStep.Refused(SpectralTexts.Reflectance(reflectance));

    /// <summary>Divides out a table.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="reflectance">Share sent back, or percent.</param>
    public static ReadingStep Divide(SpectralReading reading, TabulatedSpectrum reflectance)
    {
        double most = 0;
        foreach (double value in reflectance.Values)
        {
            most = Math.Max(most, value);
        }
        bool isPercent = most > 2;
        double scale = isPercent ? 0.01 : 1;
        if (OtherGrid.Of(reading.Spectrum, reflectance) is not var (table, values, isInterpolated))
        {
            return ReadingStep.Refused(
                SpectralTexts.NoOverlap("the reflectance", reading.Spectrum, reflectance)
            );
        }
        for (int i = 0; i < values.Length; i++)
        {
            values[i] *= scale;
            if (
                values[i] is < LeastReflectance or > 1.5
                && WavelengthRange.Visible.Contains(table.WavelengthsNm[i])
            )
            {
                return ReadingStep.Refused(SpectralTexts.ReflectanceAt(table.WavelengthsNm[i], values[i]));
            }
        }
        SpectralReading divided = reading with
        {
            Spectrum = OtherGrid.Changed(table, (i, value) => value / Math.Max(values[i], LeastReflectance)),
        };
        divided = isInterpolated ? SpectralTexts.WarnGrid(divided, "the reflectance") : divided;
        return ReadingStep.Done(
            WarnPaper(
                isPercent
                    ? divided.Warned(
                        "reflectance_percent",
                        "the reflectance is taken as percent; its values are above 2"
                    )
                    : divided
            )
        );
    }

    private static SpectralReading WarnPaper(SpectralReading reading)
    {
        double below = 0;
        double all = 0;
        TabulatedSpectrum table = reading.Spectrum;
        for (int i = 1; i < table.Count; i++)
        {
            double middleNm = (table.WavelengthsNm[i] + table.WavelengthsNm[i - 1]) / 2;
            double power =
                (table.WavelengthsNm[i] - table.WavelengthsNm[i - 1])
                * (table.Values[i] + table.Values[i - 1])
                / 2;
            below += middleNm < BrightenerBelowNm ? power : 0;
            all += middleNm <= WavelengthRange.Visible.ToNm ? power : 0;
        }
        return all > 0 && below > LeastShare * all
            ? reading.Warned(
                "paper_glows",
                ReadingTexts.Invariant(
                    $"{100 * below / all:0.#} % of the power is below {BrightenerBelowNm} nm; copier paper glows blue under violet light, read such light off barium sulphate, PTFE or unbrightened paper"
                )
            )
            : reading;
    }
}
