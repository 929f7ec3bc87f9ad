using GlowMix.Console.Texts;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Console.Plots;

/// <summary>What a prediction looks like: the spectrum bare against potted, and the decay.</summary>
internal static class PredictionPlots
{
    // A white LED has nothing below.
    private const double FirstVisibleNm = 380;

    // Below a thousandth of the limit nothing is to be seen, however long it glows on.
    private const double LeastOfLimit = 1e-3;

    /// <summary>Power over wavelength, the bare board's peak at 100.</summary>
    public static Plot Spectrum(LitSpectra spectra)
    {
        double peak = SpectrumCurves.Largest(spectra.BareWPerNm);
        double highest = Math.Max(peak, SpectrumCurves.Largest(spectra.LitWPerNm)) / peak * 100;
        List<Curve> curves =
        [
            SpectrumCurves.Of("bare", spectra.BareWPerNm, 100 / peak, LineMark.Dotted),
            SpectrumCurves.Of("potted", spectra.LitWPerNm, 100 / peak, LineMark.Solid),
        ];
        if (SpectrumCurves.Largest(spectra.PigmentWPerNm) > 0)
        {
            curves.Add(
                SpectrumCurves.Of("of it from pigment", spectra.PigmentWPerNm, 100 / peak, LineMark.Dashed)
            );
        }
        return new(
            "Lit: spectrum",
            Axis.Linear("nm", FirstVisibleNm, WavelengthGrid.LastNm),
            Axis.Linear("per nm, peak of the bare = 100", 0, highest),
            curves
        );
    }

    /// <summary>Luminance over minutes, both by factors; null if nothing ever glows.</summary>
    public static Plot? Decay(DecayCurve decay, double limitMcdPerM2)
    {
        double brightest = 0;
        foreach (double luminance in decay.HighMcdPerM2)
        {
            brightest = Math.Max(brightest, luminance);
        }
        double first = decay.Minutes[0];
        double last = decay.Minutes[^1];
        double floor = Math.Min(limitMcdPerM2, 0.3) * LeastOfLimit;
        if (brightest <= floor)
        {
            return null;
        }
        double dimmest = brightest;
        foreach (double luminance in decay.LowMcdPerM2)
        {
            dimmest = luminance > floor ? Math.Min(dimmest, luminance) : dimmest;
        }
        dimmest = Math.Min(dimmest, limitMcdPerM2);
        return new(
            "Dark: decay",
            Axis.Logarithmic("minutes after the last light", first, last),
            Axis.Logarithmic("mcd/m²", DecadeBelow(dimmest), DecadeAbove(Math.Max(brightest, limitMcdPerM2))),
            [
                new("low, high", decay.Minutes, decay.LowMcdPerM2, LineMark.Dotted),
                new("", decay.Minutes, decay.HighMcdPerM2, LineMark.Dotted),
                new("likely", decay.Minutes, decay.LikelyMcdPerM2, LineMark.Solid),
                new(
                    $"limit {Digits.Plain(limitMcdPerM2)} mcd/m²",
                    [first, last],
                    [limitMcdPerM2, limitMcdPerM2],
                    LineMark.Dashed
                ),
            ]
        );
    }

    private static double DecadeBelow(double value) => Math.Pow(10, Math.Floor(Math.Log10(value)));

    private static double DecadeAbove(double value) => Math.Pow(10, Math.Ceiling(Math.Log10(value) + 1e-9));
}
