using System.Collections.Immutable;

namespace GlowMix.Choosing.Search;

/// <summary>What a search keeps of a design.</summary>
/// <param name="Design">The design.</param>
/// <param name="OffWhite">Δu′v′ from the white aimed at; infinite if no light comes out.</param>
/// <param name="GlowMcdPerM2">Luminance at the minutes aimed at; 0 without pigment.</param>
/// <param name="Values">The figure of each target; null where it does not exist or means nothing.</param>
/// <param name="Shortfalls">How far each target is missed, in its figure's unit: 0 if met, infinite without a value.</param>
internal sealed record DesignResult(
    Design Design,
    double OffWhite,
    double GlowMcdPerM2,
    ImmutableArray<double?> Values,
    ImmutableArray<double> Shortfalls
)
{
    /// <summary>Every target is met.</summary>
    public bool IsFeasible => Shortfalls.All(s => s == 0);

    /// <summary>At least as good in both, and better in one.</summary>
    public bool Dominates(DesignResult other) =>
        OffWhite <= other.OffWhite
        && GlowMcdPerM2 >= other.GlowMcdPerM2
        && (OffWhite < other.OffWhite || GlowMcdPerM2 > other.GlowMcdPerM2);
}
