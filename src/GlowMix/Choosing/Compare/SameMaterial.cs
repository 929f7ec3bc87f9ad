using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Compare;

/// <summary>Whether two materials say the same, whatever file they were read from and whatever readings calibrated them.</summary>
internal static class SameMaterial
{
    /// <summary>Whether they do.</summary>
    public static bool Is(Material? a, Material? b) =>
        ReferenceEquals(a, b)
        || (
            a is not null
            && b is not null
            && a.Name == b.Name
            && a.Origin?.Text == b.Origin?.Text
            && a.Facts.SequenceEqual(b.Facts)
            && AsRead(a, b)
        );

    // Readings replace numbers of a material and leave its file's facts alone.
    private static bool AsRead(Material a, Material b) =>
        (a, b) switch
        {
            (Resin x, Resin y) => Is(x.AbsorptionPerMm, y.AbsorptionPerMm),
            (Pigment x, Pigment y) => Is(x.AbsorptionPerMm, y.AbsorptionPerMm)
                && x.PhotoluminescenceYield == y.PhotoluminescenceYield
                && x.TrapCapacityPerG == y.TrapCapacityPerG
                && (x.Traps?.PerG ?? []).SequenceEqual(y.Traps?.PerG ?? []),
            (Led x, Led y) => x.Bands.Zip(y.Bands)
                .All(pair =>
                    pair.First.Share.Value == pair.Second.Share.Value
                    && pair.First.ShapePerNm.Samples.SequenceEqual(pair.Second.ShapePerNm.Samples)
                )
                && x.ReturnMatrix.Doubt == y.ReturnMatrix.Doubt
                && x.ReturnMatrix.Value.ToArray()
                    .Cast<double>()
                    .SequenceEqual(y.ReturnMatrix.Value.ToArray().Cast<double>()),
            _ => a.GetType() == b.GetType(),
        };

    private static bool Is(Sourced<Spectrum> a, Sourced<Spectrum> b) =>
        a.Doubt == b.Doubt && a.Value.Samples.SequenceEqual(b.Value.Samples);
}
