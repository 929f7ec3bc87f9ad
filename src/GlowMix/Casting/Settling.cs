using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>How far grains fall in a resin before it gels.</summary>
/// <remarks>
/// Stokes' law for a sphere, slowed by the other grains by (1 − φ)ⁿ and by the resin thickening: η(t) = η₀ 2^(t / pot life).
/// Stokes' law holds for Reynolds numbers well below 1, which grains in resin never come near.
/// </remarks>
public static class Settling
{
    // Brzinski & Durian, 'The hindered settling function at low Re has two branches', arXiv:1710.09314, abstract.
    private const double ExponentAtLowPeclet = 5.6;
    private const double ExponentAtHighPeclet = 4.48;
    private const double PecletOfBranches = 1e8;

    private const double GravityMPerS2 = 9.80665; // standard gravity, CGPM 1901
    private const double BoltzmannJPerK = 1.380649e-23; // exact, SI 2019
    private const double KgM3PerGCm3 = 1000;
    private const double MPerUm = 1e-6;
    private const double PaSPerMPaS = 1e-3;
    private const double MmPerMinInMPerS = 60_000;

    /// <summary>Speed of one sphere alone in a fluid, 2 Δρ g a² / 9 η, mm/min.</summary>
    /// <param name="diameterUm">Diameter, µm.</param>
    /// <param name="densityDifferenceGPerCm3">Grain less fluid, g/cm³.</param>
    /// <param name="viscosityMPaS">Of the fluid without grains, mPa·s.</param>
    public static double StokesMmPerMin(
        double diameterUm,
        double densityDifferenceGPerCm3,
        double viscosityMPaS
    )
    {
        double radiusM = Demand.Positive(diameterUm, nameof(diameterUm), "µm") / 2 * MPerUm;
        double difference = densityDifferenceGPerCm3 * KgM3PerGCm3;
        double viscosityPaS = Demand.Positive(viscosityMPaS, nameof(viscosityMPaS), "mPa·s") * PaSPerMPaS;
        return 2 * difference * GravityMPerS2 * radiusM * radiusM / (9 * viscosityPaS) * MmPerMinInMPerS;
    }

    /// <summary>Weight against Brownian motion, (4/3) π a⁴ Δρ g / kT.</summary>
    /// <param name="diameterUm">Diameter, µm.</param>
    /// <param name="densityDifferenceGPerCm3">Grain less fluid, g/cm³.</param>
    /// <param name="temperatureC">Temperature, °C.</param>
    public static double PecletNumber(double diameterUm, double densityDifferenceGPerCm3, double temperatureC)
    {
        double radiusM = Demand.Positive(diameterUm, nameof(diameterUm), "µm") / 2 * MPerUm;
        double weightTimesRadiusJ =
            4.0
            / 3
            * Math.PI
            * Math.Pow(radiusM, 4)
            * Math.Abs(densityDifferenceGPerCm3)
            * KgM3PerGCm3
            * GravityMPerS2;
        double temperatureK =
            Demand.TemperatureC(temperatureC, nameof(temperatureC)) + TrapConstants.ZeroCelsiusK;
        return weightTimesRadiusJ / (BoltzmannJPerK * temperatureK);
    }

    /// <summary>Speed among other grains over that of one alone, (1 − φ)ⁿ: n = 5.6 below a Péclet number of 1e8, 4.48 above.</summary>
    /// <param name="volumeFraction">All grains over the mix, 0 to 1.</param>
    /// <param name="pecletNumber">Of the grain that falls.</param>
    public static double HinderedShare(double volumeFraction, double pecletNumber) =>
        Math.Pow(
            1 - Demand.Within(volumeFraction, 0, 1, nameof(volumeFraction), ""),
            pecletNumber > PecletOfBranches ? ExponentAtHighPeclet : ExponentAtLowPeclet
        );

    /// <summary>Minutes of fall at the fresh mix's speed that come to the same as the fall through the thickening one.</summary>
    /// <param name="fromMin">When it starts to stand still, min after mixing.</param>
    /// <param name="gelMin">When nothing flows any more, min after mixing; may be infinite.</param>
    /// <param name="potLifeMin">Time in which the viscosity doubles, min.</param>
    public static double EquivalentFreshMin(double fromMin, double gelMin, double potLifeMin)
    {
        Demand.NotNegative(fromMin, nameof(fromMin), "min");
        Demand.Positive(potLifeMin, nameof(potLifeMin), "min");
        if (!(gelMin > fromMin))
        {
            return 0;
        }
        double growthPerMin = Math.Log(2) / potLifeMin;
        return Math.Exp(-growthPerMin * fromMin)
            * FillStep.ShareGone(growthPerMin * (gelMin - fromMin))
            / growthPerMin;
    }
}
