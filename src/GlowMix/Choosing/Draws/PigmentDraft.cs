using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Choosing.Draws;

/// <summary>A pigment's numbers in one draw.</summary>
internal sealed class PigmentDraft(Pigment pigment)
{
    /// <summary>The pigment as it stands.</summary>
    public Pigment Pigment { get; } = pigment;

    /// <summary>On its absorption.</summary>
    public double AbsorptionFactor { get; set; } = 1;

    /// <summary>On its index at every wavelength.</summary>
    public double IndexShift { get; set; }

    /// <summary>Its yield.</summary>
    public double Yield { get; set; } = pigment.PhotoluminescenceYield.Value;

    /// <summary>Its traps in a gram.</summary>
    public double CapacityPerG { get; set; } = pigment.TrapCapacityPerG.Value;

    /// <summary>How much more a measured ladder leans than it was read to, decades from its middle to its slowest rung.</summary>
    public double Lean { get; set; }

    /// <summary>On the trapping efficiency of a measured ladder.</summary>
    public double TrappingFactor { get; set; } = 1;

    /// <summary>p of the weights that the ladder's fit is smoothed towards.</summary>
    public double WeightExponent { get; set; } = pigment.TrapWeightExponent.Value;

    /// <summary>λ of the ladder's fit.</summary>
    public double LadderSmoothing { get; set; } = LadderFit.LikelySmoothing;

    /// <summary>The pigment of these numbers.</summary>
    public Pigment Drawn() =>
        Pigment with
        {
            AbsorptionPerMm = Pigment.AbsorptionPerMm.Select(a => AbsorptionFactor * a),
            RefractiveIndex = Pigment.RefractiveIndex.Select(n => IndexDoubt.Shifted(n, IndexShift)),
            PhotoluminescenceYield = Pigment.PhotoluminescenceYield.Select(_ => Yield),
            TrapCapacityPerG = Pigment.TrapCapacityPerG.Select(_ => CapacityPerG),
            TrapWeightExponent = Pigment.TrapWeightExponent.Select(_ => WeightExponent),
        };
}
