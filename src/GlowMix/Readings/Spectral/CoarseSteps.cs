using GlowMix.Predictions;
using GlowMix.Spectra;
using MathNet.Numerics.Interpolation;

namespace GlowMix.Readings.Spectral;

/// <summary>Steps so wide that what lies between two samples is not known.</summary>
internal static class CoarseSteps
{
    private const double WideStepNm = 5.5;
    private const int LeastSamples = 5;

    /// <summary>The warning, or null.</summary>
    public static Warning? Check(ReadingFigures figures)
    {
        TabulatedSpectrum table = figures.Visible;
        double widestNm = 0;
        double atNm = 0;
        for (int i = 1; i < table.Count; i++)
        {
            double stepNm = table.WavelengthsNm[i] - table.WavelengthsNm[i - 1];
            if (stepNm > widestNm)
            {
                (widestNm, atNm) = (stepNm, table.WavelengthsNm[i - 1]);
            }
        }
        if (widestNm <= WideStepNm)
        {
            return null;
        }
        if (table.Count < LeastSamples)
        {
            return new(
                "coarse_step",
                "cct_k",
                ReadingTexts.Invariant($"only {table.Count} values from 380 to 780 nm: too few for a colour")
            );
        }
        ColourEffect effect = ColourEffect.Between(figures, Curved(table));
        string where = ReadingTexts.Invariant(
            $"{widestNm:0.#} nm from {atNm:0.#} to {atNm + widestNm:0.#} nm"
        );
        return effect.IsWorthTelling
            ? new(
                "coarse_step",
                "cct_k",
                $"the widest step is {where}; with a curve through the values instead of straight lines the CCT moves by about {effect.InWords}"
            )
            : null;
    }

    // Every nm on a monotone cubic through the samples.
    private static TabulatedSpectrum Curved(TabulatedSpectrum table)
    {
        CubicSpline curve = CubicSpline.InterpolatePchipSorted(
            table.WavelengthsNm.ToArray(),
            table.Values.ToArray()
        );
        var nm = new List<double>();
        for (double at = table.FirstNm; at <= table.LastNm; at++)
        {
            nm.Add(at);
        }
        return TabulatedSpectrum.From([.. nm], [.. nm.Select(curve.Interpolate)]);
    }
}
