using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>Pigment mass over the mass of the whole mix, 0 to 80 %. The default is clear resin.</summary>
public readonly record struct PigmentLoading
{
    private const double MostPercent = 80;
    private const double MostGPer100GResin = 400; // the same

    private PigmentLoading(double massFraction) => MassFraction = massFraction;

    /// <summary>Pigment mass over the mass of pigment, part A and part B, 0 to 0.8.</summary>
    public double MassFraction { get; }

    /// <summary>The same in %.</summary>
    public double PercentByMass => 100 * MassFraction;

    /// <summary>Pigment per 100 g of parts A and B together, g.</summary>
    public double GPer100GResin => 100 * MassFraction / (1 - MassFraction);

    /// <summary>From % of the whole mix by mass, 0 to 80.</summary>
    public static PigmentLoading FromPercentByMass(double percent) =>
        new(Demand.Within(Snapped(percent, MostPercent), 0, MostPercent, nameof(percent), "% by mass") / 100);

    /// <summary>From grams per 100 g of parts A and B together, 0 to 400.</summary>
    public static PigmentLoading FromGPer100GResin(double grams)
    {
        double snapped = Snapped(grams, MostGPer100GResin);
        Demand.Within(snapped, 0, MostGPer100GResin, nameof(grams), "g per 100 g of resin");
        return new(snapped / (100 + snapped));
    }

    /// <summary>From % of the mix by volume; at most 80 % by mass.</summary>
    /// <param name="percent">% by volume, 0 to below 100.</param>
    /// <param name="pigmentGPerCm3">Density of the solid grain, g/cm³.</param>
    /// <param name="resinGPerCm3">Density of the mixed resin, g/cm³.</param>
    public static PigmentLoading FromPercentByVolume(
        double percent,
        double pigmentGPerCm3,
        double resinGPerCm3
    )
    {
        double volumeFraction = Demand.Within(percent, 0, 100, nameof(percent), "% by volume") / 100;
        return FromPercentByMass(
            100 * Optics.Grains.VolumeFraction.ToMass(volumeFraction, pigmentGPerCm3, resinGPerCm3)
        );
    }

    /// <summary>Share of the mix's volume that is grain, 0 to 1.</summary>
    /// <param name="pigmentGPerCm3">Density of the solid grain, g/cm³.</param>
    /// <param name="resinGPerCm3">Density of the mixed resin, g/cm³.</param>
    public double VolumeFraction(double pigmentGPerCm3, double resinGPerCm3) =>
        Optics.Grains.VolumeFraction.FromMass(MassFraction, pigmentGPerCm3, resinGPerCm3);

    // The limit told another way comes back a last digit above it.
    private static double Snapped(double value, double most) =>
        value > most && value <= most * (1 + 1e-12) ? most : value;
}
