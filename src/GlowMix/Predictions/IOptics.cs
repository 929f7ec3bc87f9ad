using GlowMix.Materials;
using GlowMix.Optics.Pour;

namespace GlowMix.Predictions;

/// <summary>Where a run takes the optics of its materials from.</summary>
internal interface IOptics
{
    /// <summary>A resin's directions.</summary>
    ResinOptics Of(Resin resin);

    /// <summary>A pigment's grains in a resin.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Grains too large for the series.</exception>
    ClassedGrains GrainsOf(Pigment pigment, Resin resin, double medianUm, double gsd);
}
