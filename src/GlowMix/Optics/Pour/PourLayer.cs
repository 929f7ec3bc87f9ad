using GlowMix.Optics.Grains;
using GlowMix.Spectra;

namespace GlowMix.Optics.Pour;

/// <summary>One layer of a pour, as light of every wavelength meets it.</summary>
/// <param name="DepthMm">Depth, above 0.</param>
/// <param name="VolumeFraction">Share of the layer's volume that is pigment, 0 to 0.75; 0 for clear resin.</param>
/// <param name="Grains">The pigment's grains in this resin; null for clear resin.</param>
/// <param name="EmissionPerNm">The pigment's emission, energy per nm with an integral of 1; null for clear resin.</param>
/// <param name="Yield">Photons emitted per photon absorbed, 0 to 1.</param>
public sealed record PourLayer(
    double DepthMm,
    double VolumeFraction,
    GrainTable? Grains,
    Spectrum? EmissionPerNm,
    double Yield
)
{
    /// <summary>Clear resin.</summary>
    public static PourLayer Clear(double depthMm) => new(depthMm, 0, null, null, 0);

    /// <summary>Whether there is pigment in it.</summary>
    public bool HasPigment => Grains is not null && EmissionPerNm is not null && VolumeFraction > 0;
}
