using GlowMix.Choosing.Compare;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Console.Plots;

/// <summary>Two predictions laid over each other: their spectra, their decays.</summary>
internal static class ComparisonPlots
{
    private const double FirstVisibleNm = 380;
    private const double LeastOfLimit = 1e-3;

    /// <summary>Power over wavelength, the first piece's peak at 100.</summary>
    public static Plot Spectrum(Comparison comparison)
    {
        var before = comparison.Before.Spectra.LitWPerNm;
        var after = comparison.After.Spectra.LitWPerNm;
        double peak = SpectrumCurves.Largest(before) is > 0 and var largest
            ? largest
            : Math.Max(1e-12, SpectrumCurves.Largest(after));
        return new(
            "Lit: spectrum, potted",
            Axis.Linear("nm", FirstVisibleNm, WavelengthGrid.LastNm),
            Axis.Linear(
                "per nm, peak before = 100",
                0,
                Math.Max(100, 100 * SpectrumCurves.Largest(after) / peak)
            ),
            [
                SpectrumCurves.Of("before", before, 100 / peak, LineMark.Dotted),
                SpectrumCurves.Of("after", after, 100 / peak, LineMark.Solid),
            ]
        );
    }

    /// <summary>Luminance over minutes, both by factors; null if neither glows.</summary>
    public static Plot? Decay(Comparison comparison)
    {
        var curves = new List<Curve>();
        Add("before", comparison.Before.Decay, LineMark.Dotted);
        Add("after", comparison.After.Decay, LineMark.Solid);
        double limit = comparison.After.LimitMcdPerM2;
        double floor = Math.Min(limit, 0.3) * LeastOfLimit;
        double[] seen = [.. curves.SelectMany(c => c.Ys).Where(y => y > floor)];
        if (seen.Length == 0)
        {
            return null;
        }
        var minutes = curves[0].Xs;
        curves.Add(
            new(
                $"limit {Texts.Digits.Plain(limit)} mcd/m²",
                [minutes[0], minutes[^1]],
                [limit, limit],
                LineMark.Dashed
            )
        );
        return new(
            "Dark: decay, likely",
            Axis.Logarithmic("minutes after the last light", minutes[0], minutes[^1]),
            Axis.Logarithmic(
                "mcd/m²",
                Decade(Math.Min(seen.Min(), limit), Math.Floor),
                Decade(Math.Max(seen.Max(), limit) * (1 + 1e-9), Math.Ceiling)
            ),
            curves
        );

        void Add(string name, DecayCurve? decay, LineMark mark)
        {
            if (decay is not null)
            {
                curves.Add(new(name, decay.Minutes, decay.LikelyMcdPerM2, mark));
            }
        }
    }

    private static double Decade(double value, Func<double, double> round) =>
        Math.Pow(10, round(Math.Log10(value)));
}
