using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Materials;

namespace GlowMix.Casting;

/// <summary>How thick a mixed resin is, and for how long it flows. Immutable.</summary>
/// <remarks>
/// Pot life is read as the time in which the viscosity doubles, and it halves for 10 K more: common practice, no source. One
/// stated viscosity doubles for 15 K less: assumed.
/// </remarks>
public sealed class ResinFlow
{
    private const double KelvinPerPotLifeHalving = 10;
    private const double KelvinPerViscosityDoubling = 15;

    private readonly ImmutableArray<Viscosity> viscosities;
    private readonly ImmutableArray<PotLife> potLives;
    private readonly double? gelTimeMin;

    /// <param name="viscosities">Of the fresh mix without pigment; one or more, no temperature twice.</param>
    /// <param name="potLives">One or more.</param>
    /// <param name="gelTimeMin">Minutes from mixing until nothing flows, at the mass and temperature of the first pot life; null if not told.</param>
    public ResinFlow(
        ImmutableArray<Viscosity> viscosities,
        ImmutableArray<PotLife> potLives,
        double? gelTimeMin
    )
    {
        if (viscosities.IsDefaultOrEmpty || potLives.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A resin has at least one viscosity and one pot life.");
        }
        foreach (Viscosity viscosity in viscosities)
        {
            Demand.Positive(viscosity.MPaS, "viscosity", "mPa·s");
            Demand.TemperatureC(viscosity.TemperatureC, "temperature");
        }
        if (viscosities.Any(v => viscosities.Count(other => other.TemperatureC == v.TemperatureC) > 1))
        {
            throw new ArgumentException(
                "A resin has one viscosity for each temperature.",
                nameof(viscosities)
            );
        }
        foreach (PotLife potLife in potLives)
        {
            Demand.Positive(potLife.Minutes, "pot life", "min");
            Demand.Positive(potLife.MassG, "mass", "g");
            Demand.TemperatureC(potLife.TemperatureC, "temperature");
        }
        if (gelTimeMin is double gel)
        {
            Demand.Positive(gel, nameof(gelTimeMin), "min");
        }
        this.viscosities = viscosities.Sort((a, b) => a.TemperatureC.CompareTo(b.TemperatureC));
        this.potLives = potLives;
        this.gelTimeMin = gelTimeMin;
    }

    /// <summary>Viscosity of the fresh mix without pigment, mPa·s.</summary>
    /// <param name="temperatureC">Temperature of the mix, °C.</param>
    /// <remarks>From two temperatures on, ln η is straight over 1/T between neighbours and beyond the last pair (Arrhenius).</remarks>
    public double ViscosityMPaS(double temperatureC)
    {
        Demand.TemperatureC(temperatureC, nameof(temperatureC));
        if (viscosities.Length == 1)
        {
            Viscosity only = viscosities[0];
            return only.MPaS * Math.Pow(2, (only.TemperatureC - temperatureC) / KelvinPerViscosityDoubling);
        }
        int upper = 1;
        while (upper < viscosities.Length - 1 && temperatureC > viscosities[upper].TemperatureC)
        {
            upper++;
        }
        (Viscosity low, Viscosity high) = (viscosities[upper - 1], viscosities[upper]);
        double share =
            (InverseK(temperatureC) - InverseK(low.TemperatureC))
            / (InverseK(high.TemperatureC) - InverseK(low.TemperatureC));
        return low.MPaS * Math.Pow(high.MPaS / low.MPaS, share);
    }

    /// <summary>Pot life of a mass of mixed resin, min.</summary>
    /// <param name="massG">Mass of parts A and B in one vessel, g; null where it is not known: the lightest of the sheet.</param>
    /// <param name="temperatureC">Temperature at the start, °C.</param>
    /// <remarks>
    /// Between masses a straight line through the logarithms. Beyond the lightest and the heaviest of the sheet the value at the
    /// end: a lighter mix lives longer than told, a heavier one sets sooner (see <see cref="IsBeyondSheet"/>).
    /// </remarks>
    public double PotLifeMin(double? massG, double temperatureC)
    {
        PotLife[] byMass = NearestInTemperature(temperatureC);
        double[] minutes = Array.ConvertAll(byMass, p => AtTemperature(p, temperatureC));
        if (massG is not double mass || mass <= byMass[0].MassG)
        {
            return minutes[0];
        }
        if (mass >= byMass[^1].MassG)
        {
            return minutes[^1];
        }
        int upper = Array.FindIndex(byMass, p => p.MassG > mass);
        double share =
            Math.Log(mass / byMass[upper - 1].MassG)
            / Math.Log(byMass[upper].MassG / byMass[upper - 1].MassG);
        return minutes[upper - 1] * Math.Pow(minutes[upper] / minutes[upper - 1], share);
    }

    /// <summary>The heaviest mass that the sheet tells a pot life for, g.</summary>
    public double HeaviestOnSheetG => potLives.Max(p => p.MassG);

    /// <summary>Whether a mass is heavier than any the sheet tells a pot life for, so that it may set sooner than computed.</summary>
    public bool IsBeyondSheet(double massG) => massG > HeaviestOnSheetG;

    /// <summary>Minutes from mixing until nothing flows; infinite where the sheet tells no gel time.</summary>
    /// <remarks>Follows mass and temperature as the pot life does.</remarks>
    public double GelTimeMin(double? massG, double temperatureC) =>
        gelTimeMin is double gel
            ? gel * PotLifeMin(massG, temperatureC) / potLives[0].Minutes
            : double.PositiveInfinity;

    /// <summary>Of each mass on the sheet the pot life told nearest to a temperature; masses rising.</summary>
    private PotLife[] NearestInTemperature(double temperatureC)
    {
        var nearest = new List<PotLife>();
        foreach (PotLife potLife in potLives)
        {
            int known = nearest.FindIndex(p => p.MassG == potLife.MassG);
            if (known < 0)
            {
                nearest.Add(potLife);
            }
            else if (
                Math.Abs(potLife.TemperatureC - temperatureC)
                < Math.Abs(nearest[known].TemperatureC - temperatureC)
            )
            {
                nearest[known] = potLife;
            }
        }
        nearest.Sort((a, b) => a.MassG.CompareTo(b.MassG));
        return [.. nearest];
    }

    // Common practice, no source: 10 K warmer, half the time.
    private static double AtTemperature(PotLife potLife, double temperatureC) =>
        potLife.Minutes * Math.Pow(2, (potLife.TemperatureC - temperatureC) / KelvinPerPotLifeHalving);

    private static double InverseK(double celsius) => 1 / (celsius + TrapConstants.ZeroCelsiusK);
}
