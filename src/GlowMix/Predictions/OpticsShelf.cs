using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using GlowMix.Casting;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Optics.Pour;

namespace GlowMix.Predictions;

/// <summary>
/// What is worked out once a material and then kept: a resin's directions, a pigment's grains in a resin. Safe to use from
/// several threads.
/// </summary>
internal sealed class OpticsShelf
{
    private readonly ConditionalWeakTable<Resin, ResinOptics> resins = [];
    private readonly ConcurrentDictionary<GrainKey, Lazy<ClassedGrains>> grains = new();

    public ResinOptics Of(Resin resin) =>
        resins.GetValue(resin, r => new ResinOptics(r.RefractiveIndex.Value, r.AbsorptionPerMm.Value));

    /// <exception cref="ArgumentOutOfRangeException">Grains too large for the series.</exception>
    public ClassedGrains GrainsOf(Pigment pigment, Resin resin, double medianUm, double gsd) =>
        grains.GetOrAdd(new(pigment, resin, medianUm, gsd), key => new(() => Averaged(key))).Value;

    private static ClassedGrains Averaged(GrainKey key)
    {
        var sizes = GrainSizes.ByMass(key.MedianUm, key.Gsd);
        return new([
            .. Enumerable
                .Range(0, GrainClasses.Count)
                .Select(i =>
                    GrainTable.Of(
                        key.Pigment.RefractiveIndex.Value,
                        key.Pigment.AbsorptionPerMm.Value,
                        key.Resin.RefractiveIndex.Value,
                        sizes.MassClass(i, GrainClasses.Count)
                    )
                ),
        ]);
    }

    private readonly record struct GrainKey(Pigment Pigment, Resin Resin, double MedianUm, double Gsd);
}
