using GlowMix.Optics.Grains;
using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Optics.Pour;

/// <summary>Pours of invented grains with the phase function of Henyey and Greenstein, so that no series has to be summed.</summary>
internal static class SamplePours
{
    /// <summary>The size of a shipped epoxy, with dispersion and some absorption everywhere.</summary>
    internal static ResinOptics Resin { get; } =
        new(
            Spectrum.FromNm(nm => 1.53 + (0.0069 * ((1e6 / (nm * nm)) - 2.896))),
            Spectrum.FromNm(nm => 0.001 + (0.05 * Math.Exp((340 - nm) / 40)))
        );

    /// <summary>Blue in, green out: of the size of a green aluminate, its absorption reaching into its emission.</summary>
    internal static PourLayer Green(double depthMm, double volumeFraction = 0.07, double yield = 0.75) =>
        new(depthMm, volumeFraction, GreenGrains, Band(520, 80), yield);

    /// <summary>Violet in, blue out, into the absorption of the green one.</summary>
    internal static PourLayer Blue(double depthMm, double volumeFraction = 0.04, double yield = 0.6) =>
        new(depthMm, volumeFraction, BlueGrains, Band(442, 50), yield);

    internal static PourStack Stack(double packageHeightMm, params PourLayer[] layers) =>
        new(Resin, layers, packageHeightMm);

    /// <summary>Every layer in equal slices.</summary>
    internal static PourStack Sliced(PourStack stack, int slices) =>
        stack with
        {
            Layers =
            [
                .. stack.Layers.SelectMany(l =>
                    Enumerable.Repeat(l with { DepthMm = l.DepthMm / slices }, slices)
                ),
            ],
        };

    /// <summary>Power per nm with an integral of 1.</summary>
    internal static Spectrum Band(double peakNm, double fwhmNm)
    {
        var raw = Spectrum.FromNm(nm => Math.Exp(-4 * Math.Log(2) * Math.Pow((nm - peakNm) / fwhmNm, 2)));
        return 1 / raw.IntegralOverNm() * raw;
    }

    private static GrainTable GreenGrains { get; } =
        GrainTable.HenyeyGreenstein(
            Spectrum.FromNm(nm => 15 / (1 + Math.Exp((nm - 445) / 12))),
            Spectrum.Constant(60),
            Spectrum.Constant(0.96)
        );

    private static GrainTable BlueGrains { get; } =
        GrainTable.HenyeyGreenstein(
            Spectrum.FromNm(nm => 12 / (1 + Math.Exp((nm - 400) / 10))),
            Spectrum.Constant(80),
            Spectrum.Constant(0.95)
        );
}
