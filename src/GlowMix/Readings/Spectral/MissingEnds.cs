using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>Visible wavelengths before the first sample or behind the last.</summary>
internal static class MissingEnds
{
    private const double TaperNm = 10;

    /// <summary>The warning, or null.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="isShortEnd">The violet end, else the red one.</param>
    public static Warning? Check(ReadingFigures figures, bool isShortEnd)
    {
        TabulatedSpectrum table = figures.Visible;
        double endNm = isShortEnd ? table.FirstNm : table.LastNm;
        double limitNm = isShortEnd ? WavelengthRange.Visible.FromNm : WavelengthRange.Visible.ToNm;
        double missingNm = Math.Abs(endNm - limitNm);
        if (missingNm <= 1 || table.Count < 3)
        {
            return null;
        }
        ColourEffect effect = ColourEffect.Between(figures, Extended(table, isShortEnd, limitNm));
        return effect.IsWorthTelling
            ? new(
                "range",
                "cct_k",
                ReadingTexts.Invariant(
                    $"{(isShortEnd ? "begins" : "ends")} at {endNm:0.#} nm; if the light goes on beyond as it stands there, the CCT moves by about {effect.InWords}"
                )
            )
            : null;
    }

    /// <summary>
    /// The table with its end drawn on to the limit: falling as it falls over its last 10 nm, else at the height of its end.
    /// </summary>
    private static TabulatedSpectrum Extended(TabulatedSpectrum table, bool isShortEnd, double limitNm)
    {
        double endNm = isShortEnd ? table.FirstNm : table.LastNm;
        var distances = new List<double>();
        var logs = new List<double>();
        double sum = 0;
        for (int i = 0; i < table.Count; i++)
        {
            double distance = Math.Abs(table.WavelengthsNm[i] - endNm);
            if (distance <= TaperNm)
            {
                distances.Add(distance);
                logs.Add(Math.Log(Math.Max(table.Values[i], double.Epsilon)));
                sum += table.Values[i];
            }
        }
        double level = Math.Max(0, isShortEnd ? table.Values[0] : table.Values[^1]);
        double fallPerNm = 0;
        if (distances.Count >= 2 && level > 0 && logs.TrueForAll(l => l > -300))
        {
            double[] line = MathNet.Numerics.Fit.Polynomial([.. distances], [.. logs], 1);
            fallPerNm = Math.Max(0, line[1]);
            level = Math.Exp(line[0]);
        }
        else if (distances.Count > 0)
        {
            // Noise about zero: its mean.
            level = Math.Max(0, sum / distances.Count);
        }
        double stepNm = Math.Max(1, (table.LastNm - table.FirstNm) / (table.Count - 1));
        var nm = new List<double>(table.WavelengthsNm.ToArray());
        var values = new List<double>(table.Values.ToArray());
        for (double beyond = stepNm; beyond <= Math.Abs(endNm - limitNm) + 1e-9; beyond += stepNm)
        {
            nm.Insert(isShortEnd ? 0 : nm.Count, isShortEnd ? endNm - beyond : endNm + beyond);
            values.Insert(isShortEnd ? 0 : values.Count, level * Math.Exp(-fallPerNm * beyond));
        }
        return TabulatedSpectrum.From([.. nm], [.. values]);
    }
}
