using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>How grains crowd each other: what thickens a mix and how dense a settled bed is. Immutable.</summary>
/// <remarks>
/// Krieger–Dougherty: η/η₀ = (1 − φ/φ_m)^(−[η] φ_m), as in table 6 of Entropy 23 (2021) 979. Valid for slow shear and grains
/// too large for Brownian motion.
/// </remarks>
public sealed record GrainPacking
{
    /// <summary>Share of the densest packing from which a mix does not pour. Assumed.</summary>
    public const double LeastShareThatDoesNotPour = 0.95;

    /// <summary>Share of the densest packing that a settled bed reaches. Assumed.</summary>
    public const double ShareOfBed = 0.9;

    /// <summary>Crushed grains: [η] 3.5, φ_m 0.54, the middle of 3 to 4 and 0.50 to 0.58. Assumed.</summary>
    public static GrainPacking Crushed { get; } = new(intrinsicViscosity: 3.5, densestFraction: 0.54);

    /// <summary>Spheres: [η] 2.5 (Einstein), φ_m 0.64 (random close packing, from memory).</summary>
    public static GrainPacking Spheres { get; } = new(intrinsicViscosity: 2.5, densestFraction: 0.64);

    /// <param name="intrinsicViscosity">[η], relative thickening per volume fraction of few grains, 2.5 to 10.</param>
    /// <param name="densestFraction">φ_m, the volume fraction at which nothing flows, 0.2 to 0.75.</param>
    public GrainPacking(double intrinsicViscosity, double densestFraction)
    {
        IntrinsicViscosity = Demand.Within(intrinsicViscosity, 2.5, 10, nameof(intrinsicViscosity), "");
        DensestFraction = Demand.Within(densestFraction, 0.2, 0.75, nameof(densestFraction), "");
    }

    /// <summary>[η].</summary>
    public double IntrinsicViscosity { get; }

    /// <summary>φ_m, volume fraction.</summary>
    public double DensestFraction { get; }

    /// <summary>Volume fraction of a settled bed.</summary>
    public double BedFraction => ShareOfBed * DensestFraction;

    /// <summary>Whether a mix of this volume fraction can be poured.</summary>
    public bool Pours(double volumeFraction) => volumeFraction < LeastShareThatDoesNotPour * DensestFraction;

    /// <summary>Viscosity of the mix over that of its resin, 1 or more; null for a mix that does not pour.</summary>
    /// <param name="volumeFraction">Grain volume over volume of the mix, 0 to 1.</param>
    public double? RelativeViscosity(double volumeFraction) =>
        Pours(Demand.Within(volumeFraction, 0, 1, nameof(volumeFraction), ""))
            ? Math.Pow(1 - (volumeFraction / DensestFraction), -IntrinsicViscosity * DensestFraction)
            : null;
}
