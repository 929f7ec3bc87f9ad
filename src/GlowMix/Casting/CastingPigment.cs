using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>A pigment as the scale and the pour see it. Immutable.</summary>
public sealed class CastingPigment
{
    /// <param name="densityGPerCm3">Density of the solid grain, g/cm³.</param>
    /// <param name="grains">Sizes.</param>
    /// <param name="packing">How its grains crowd each other.</param>
    public CastingPigment(double densityGPerCm3, GrainClasses grains, GrainPacking packing)
    {
        ArgumentNullException.ThrowIfNull(grains);
        ArgumentNullException.ThrowIfNull(packing);
        DensityGPerCm3 = Demand.Positive(densityGPerCm3, nameof(densityGPerCm3), "g/cm³");
        Grains = grains;
        Packing = packing;
    }

    /// <summary>Density of the solid grain, g/cm³.</summary>
    public double DensityGPerCm3 { get; }

    /// <summary>Sizes.</summary>
    public GrainClasses Grains { get; }

    /// <summary>How its grains crowd each other.</summary>
    public GrainPacking Packing { get; }
}
