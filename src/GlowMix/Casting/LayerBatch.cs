using System.Collections.Immutable;

namespace GlowMix.Casting;

/// <summary>What to weigh for one layer, and how its mix flows and settles. Immutable; masses are null where a size of the pour is not known.</summary>
public sealed record LayerBatch
{
    private const double LeastFallOfDepth = 0.01;

    /// <summary>The layer.</summary>
    public required CastingLayer Layer { get; init; }

    /// <summary>Volume that the layer takes in one piece, ml.</summary>
    public double? PourVolumeMl { get; init; }

    /// <summary>Volume to mix for all pieces, waste included, ml.</summary>
    public double? MixVolumeMl { get; init; }

    /// <summary>Parts A and B, waste included, g.</summary>
    public double? ResinG => PartAG + PartBG;

    /// <summary>Part A, waste included, g.</summary>
    public double? PartAG { get; init; }

    /// <summary>Part B, waste included, g.</summary>
    public double? PartBG { get; init; }

    /// <summary>Pigment, waste included, g; 0 for a clear layer.</summary>
    public double? PigmentG { get; init; }

    /// <summary>Grain volume over volume of the mix, 0 to 1.</summary>
    public required double VolumeFraction { get; init; }

    /// <summary>The same in %.</summary>
    public double PigmentVolumePercent => 100 * VolumeFraction;

    /// <summary>Viscosity of the fresh mix with its pigment, mPa·s; null where it does not pour.</summary>
    public double? ViscosityMPaS { get; init; }

    /// <summary>Whether the mix can be poured.</summary>
    public bool Pours => ViscosityMPaS is not null;

    /// <summary>Pot life at this mass and temperature, min.</summary>
    public required double PotLifeMin { get; init; }

    /// <summary>Whether the mass is heavier than the sheet tells, so that it may set sooner and heat more than computed.</summary>
    public bool IsHeavierThanSheet { get; init; }

    /// <summary>Minutes from mixing until nothing flows; infinite where no gel time is told.</summary>
    public required double GelTimeMin { get; init; }

    /// <summary>Pot life less stirring and vacuum, min; below 0 the mix is past it before it is poured.</summary>
    public required double DegasWindowMin { get; init; }

    /// <summary>How far the median grain falls from pour to gel, mm, at most to the bed; 0 for a clear layer.</summary>
    public required double SettledMm { get; init; }

    /// <summary>How far each class of grain would fall in a deep pour, mm, finest first; empty for a clear layer.</summary>
    public ImmutableArray<double> ClassFallsMm { get; init; } = [];

    /// <summary>Cost of resin and pigment, waste included; null where a price or a size is not known.</summary>
    public double? Cost { get; init; }

    /// <summary>
    /// Whether grains move measurably: the coarsest class falls by 1 % of the depth or more, and the mix is not as dense as a bed
    /// to begin with.
    /// </summary>
    public bool Settles =>
        Layer.Pigment is { } pigment
        && VolumeFraction > 0
        && VolumeFraction < pigment.Packing.BedFraction
        && ClassFallsMm[^1] >= LeastFallOfDepth * Layer.DepthMm;

    /// <summary>The layer as it gels; null for a clear layer.</summary>
    public SettledProfile? Settled() =>
        Layer.Pigment is { } pigment
            ? SettledProfile.Of(
                Layer.DepthMm,
                VolumeFraction,
                ClassFallsMm.AsSpan(),
                pigment.Packing.BedFraction
            )
            : null;

    /// <summary>The masses as a scale shows them; null where they are not known.</summary>
    /// <param name="stepG">The smallest step the scale shows, g.</param>
    public WeighedBatch? Weighed(double stepG) =>
        PartAG is double partAG && PartBG is double partBG && PigmentG is double pigmentG
            ? new(partAG, partBG, pigmentG, stepG)
            : null;
}
