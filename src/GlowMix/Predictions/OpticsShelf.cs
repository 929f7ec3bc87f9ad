using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using GlowMix.Casting;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Predictions;

/// <summary>
/// What is worked out once a material and then kept: a resin's directions, a pigment's grains in a resin. Safe to use from
/// several threads.
/// </summary>
/// <param name="readsDerived">False works out what travels along, too.</param>
/// <param name="sizeCount">Sizes that grains are averaged over, where they are worked out.</param>
internal sealed class OpticsShelf(bool readsDerived = true, int sizeCount = GrainTable.DefaultSizeCount)
    : IOptics
{
    private readonly ConditionalWeakTable<Resin, ResinOptics> resins = [];
    private readonly ConcurrentDictionary<GrainKey, Lazy<ClassedGrains>> grains = new();

    public ResinOptics Of(Resin resin) =>
        resins.GetValue(resin, r => new ResinOptics(r.RefractiveIndex.Value, r.AbsorptionPerMm.Value));

    /// <exception cref="ArgumentOutOfRangeException">Grains too large for the series.</exception>
    public ClassedGrains GrainsOf(Pigment pigment, Resin resin, double medianUm, double gsd) =>
        grains.GetOrAdd(new(pigment, resin, medianUm, gsd), key => new(() => Find(key))).Value;

    private ClassedGrains Find(GrainKey key)
    {
        int highestMoment = Of(key.Resin).HighestMoment;
        return (
                readsDerived
                    ? DerivedGrains.Find(key.Pigment, key.Resin, key.MedianUm, key.Gsd, highestMoment)
                    : null
            ) ?? Average(key.Pigment, key.Resin, key.MedianUm, key.Gsd, highestMoment);
    }

    /// <summary>Grains worked out anew, and not kept.</summary>
    /// <param name="pigment">Of its numbers index and absorption count.</param>
    /// <param name="resin">Of its numbers the index counts.</param>
    /// <param name="medianUm">Median diameter, µm.</param>
    /// <param name="gsd">Geometric standard deviation.</param>
    /// <param name="highestMoment">Of the phase functions.</param>
    /// <param name="everySecond">As <see cref="GrainTable.OfEverySecond"/> has them.</param>
    public ClassedGrains Average(
        Pigment pigment,
        Resin resin,
        double medianUm,
        double gsd,
        int highestMoment,
        bool everySecond = false
    )
    {
        var sizes = GrainSizes.ByMass(medianUm, gsd);
        return new([
            .. Enumerable
                .Range(0, GrainClasses.Count)
                .Select(i =>
                    (everySecond ? GrainTable.OfEverySecond : (Averaging)GrainTable.Of)(
                        pigment.RefractiveIndex.Value,
                        pigment.AbsorptionPerMm.Value,
                        resin.RefractiveIndex.Value,
                        sizes.MassClass(i, GrainClasses.Count),
                        sizeCount,
                        highestMoment
                    )
                ),
        ]);
    }

    private delegate GrainTable Averaging(
        Spectrum pigmentIndex,
        Spectrum pigmentAbsorptionPerMm,
        Spectrum resinIndex,
        GrainSizes sizes,
        int sizeCount,
        int highestMoment
    );

    /// <summary>Materials are told apart by what they are, not by comparing all their numbers.</summary>
    private sealed class GrainKey(Pigment pigment, Resin resin, double medianUm, double gsd)
        : IEquatable<GrainKey>
    {
        public Pigment Pigment { get; } = pigment;

        public Resin Resin { get; } = resin;

        public double MedianUm { get; } = medianUm;

        public double Gsd { get; } = gsd;

        public bool Equals(GrainKey? other) =>
            other is not null
            && ReferenceEquals(Pigment, other.Pigment)
            && ReferenceEquals(Resin, other.Resin)
            && MedianUm == other.MedianUm
            && Gsd == other.Gsd;

        public override bool Equals(object? obj) => Equals(obj as GrainKey);

        public override int GetHashCode() =>
            HashCode.Combine(
                RuntimeHelpers.GetHashCode(Pigment),
                RuntimeHelpers.GetHashCode(Resin),
                MedianUm,
                Gsd
            );
    }
}
