using GlowMix.Spectra;

namespace GlowMix.Readings.Fit;

/// <summary>
/// Noise of a spectrum, told from the spectrum: one part in proportion to the level, one that is always there. From how far each
/// sample lies off the straight line between its neighbours, by medians, so that bands and lines in it count little.
/// </summary>
internal sealed class ReadingNoise
{
    /// <summary>Standard deviations in a median deviation of a normal distribution: 1 / Φ⁻¹(3/4).</summary>
    private const double DeviationsPerMedian = 1.482602218505602;

    /// <summary>What 5 nm steps of the model and its rounding may be off, relative. Assumed.</summary>
    public const double ModelShare = 0.001;

    // Where a reading is nearly nothing, what is left is noise that is always there; where it is strong, that in proportion rules.
    private const double WeakShare = 0.02;
    private const double StrongShare = 0.2;
    private const int FewestSamples = 8;

    private readonly TabulatedSpectrum table;
    private readonly double relative;
    private readonly double constant;

    private ReadingNoise(TabulatedSpectrum table, double relative, double constant) =>
        (this.table, this.relative, this.constant) = (table, relative, constant);

    /// <summary>Works the noise of a table out.</summary>
    public static ReadingNoise Of(TabulatedSpectrum table)
    {
        double peak = 0;
        foreach (double v in table.Values)
        {
            peak = Math.Max(peak, v);
        }
        var weak = new List<double>();
        var strong = new List<double>();
        for (int i = 1; i < table.Values.Length - 1; i++)
        {
            double off = Off(table, i);
            if (table.Values[i] < WeakShare * peak)
            {
                weak.Add(Math.Abs(off));
            }
            else if (table.Values[i] > StrongShare * peak)
            {
                strong.Add(Math.Abs(off / table.Values[i]));
            }
        }
        return new(table, Median(strong), Median(weak));
    }

    /// <summary>Relative standard deviation of the mean over one step of the model's grid.</summary>
    /// <param name="sample">Index on the grid.</param>
    /// <param name="level">The mean there, above 0.</param>
    public double RelativeAt(int sample, double level)
    {
        double nm = WavelengthGrid.NmAt(sample);
        const double half = WavelengthGrid.StepNm / 2.0;
        int count = table.IndexAtOrAfter(nm + half) - table.IndexAtOrAfter(nm - half);
        double single = Math.Sqrt((relative * relative) + (constant * constant / (level * level)));
        return single / Math.Sqrt(Math.Max(1, count));
    }

    // Off the line between its neighbours, scaled so that it has the deviation of one sample.
    private static double Off(TabulatedSpectrum table, int i)
    {
        double before = table.WavelengthsNm[i] - table.WavelengthsNm[i - 1];
        double after = table.WavelengthsNm[i + 1] - table.WavelengthsNm[i];
        double share = before / (before + after);
        double line = ((1 - share) * table.Values[i - 1]) + (share * table.Values[i + 1]);
        return (table.Values[i] - line) / Math.Sqrt(1 + (share * share) + ((1 - share) * (1 - share)));
    }

    private static double Median(List<double> values)
    {
        if (values.Count < FewestSamples)
        {
            return 0;
        }
        values.Sort(Ascending.Order);
        return DeviationsPerMedian * values[values.Count / 2];
    }
}
