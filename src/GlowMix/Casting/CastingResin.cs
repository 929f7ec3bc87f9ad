using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>A two-part resin as the scale and the pour see it. Immutable.</summary>
public sealed class CastingResin
{
    /// <param name="densityMixGPerCm3">Density of the mix, g/cm³; shrinkage is ignored.</param>
    /// <param name="massShareOfPartA">Mass of part A over that of both parts, between 0 and 1.</param>
    /// <param name="flow">Viscosity, pot life and gel time.</param>
    public CastingResin(double densityMixGPerCm3, double massShareOfPartA, ResinFlow flow)
    {
        ArgumentNullException.ThrowIfNull(flow);
        DensityMixGPerCm3 = Demand.Positive(densityMixGPerCm3, nameof(densityMixGPerCm3), "g/cm³");
        MassShareOfPartA = massShareOfPartA is > 0 and < 1
            ? massShareOfPartA
            : throw new ArgumentOutOfRangeException(
                nameof(massShareOfPartA),
                massShareOfPartA,
                "The share of part A must lie between 0 and 1."
            );
        Flow = flow;
    }

    /// <summary>Density of the mix, g/cm³.</summary>
    public double DensityMixGPerCm3 { get; }

    /// <summary>Mass of part A over that of both parts.</summary>
    public double MassShareOfPartA { get; }

    /// <summary>Viscosity, pot life and gel time.</summary>
    public ResinFlow Flow { get; }
}
