using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>How far a fault of a reading moves its colour: what is warned about is the effect and not the fault.</summary>
internal readonly record struct ColourEffect
{
    // Under this the whole reading is not good enough for it to matter.
    private const double LeastShareOfCct = 1.5e-3;
    private const double LeastUPrimeVPrime = 0.0005;

    private ColourEffect(ColourPoint from, ColourPoint to)
    {
        ShiftK = to.CctK - from.CctK;
        UPrimeVPrime =
            from.Chromaticity is { } a && to.Chromaticity is { } b ? ColourDifference.UPrimeVPrime(a, b) : 0;
        IsWorthTelling =
            ShiftK is { } kelvin && from.CctK is { } cctK
                ? Math.Abs(kelvin) >= LeastShareOfCct * cctK
                : UPrimeVPrime >= LeastUPrimeVPrime || from.CctK is null != to.CctK is null;
    }

    /// <summary>CCT with the fault taken away minus CCT as it is, K; null where one of them does not exist.</summary>
    public double? ShiftK { get; }

    /// <summary>Distance of the two colours in u′, v′.</summary>
    public double UPrimeVPrime { get; }

    /// <summary>It is more than readings are good for anyhow.</summary>
    public bool IsWorthTelling { get; }

    /// <summary>'+22 K' or 'Δu′v′ 0.0012'.</summary>
    public string InWords =>
        ShiftK is { } kelvin
            ? ReadingTexts.Invariant($"{kelvin:+0;-0;0} K")
            : ReadingTexts.Invariant($"{UPrimeVPrime:0.0000} in u′v′");

    /// <summary>From the reading to what it may be without the fault.</summary>
    public static ColourEffect Between(ReadingFigures figures, TabulatedSpectrum without) =>
        new(figures.Colour.Point, ColourPoint.Of(without.Values, ObserverWeights.For(without)));
}
