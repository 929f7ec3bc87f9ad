using System.Collections.Immutable;
using GlowMix.Materials;

namespace GlowMix.Afterglow;

/// <summary>What a pigment's sheet says of its decay, with the sample and the charge it was read on. Immutable.</summary>
public sealed class SolvedSheet
{
    /// <param name="points">At least one; no minute twice.</param>
    /// <param name="chargeMinutes">How long the sample was lit, from empty traps, min.</param>
    /// <param name="temperatureC">Temperature of charge and decay, °C.</param>
    /// <param name="absorbedPerSMm3">Photons absorbed per second and mm³ of pigment at each depth of the sample.</param>
    /// <param name="mcdM2PerPhotonPerSMm3">What one photon emitted per second and mm³ of pigment at each depth adds to the luminance, mcd/m².</param>
    /// <param name="capacityPerMm3">Traps per mm³ of pigment, taken as known.</param>
    public SolvedSheet(
        ImmutableArray<SheetPoint> points,
        double chargeMinutes,
        double temperatureC,
        ImmutableArray<double> absorbedPerSMm3,
        ImmutableArray<double> mcdM2PerPhotonPerSMm3,
        double capacityPerMm3
    )
    {
        if (points.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A sheet has at least one point.", nameof(points));
        }
        foreach (SheetPoint point in points)
        {
            Demand.Positive(point.Minutes, "minutes", "min");
            Demand.Positive(point.LuminanceMcdM2, "luminance", "mcd/m²");
        }
        if (points.Select(point => point.Minutes).Distinct().Count() < points.Length)
        {
            throw new ArgumentException("A sheet has one luminance for each minute.", nameof(points));
        }
        Demand.NoneNegative(absorbedPerSMm3.AsSpan(), nameof(absorbedPerSMm3), "photons/(s mm³)");
        Demand.NoneNegative(mcdM2PerPhotonPerSMm3.AsSpan(), nameof(mcdM2PerPhotonPerSMm3), "mcd/m²");
        Demand.Length(mcdM2PerPhotonPerSMm3.Length, absorbedPerSMm3.Length, nameof(mcdM2PerPhotonPerSMm3));
        Points = points.Sort((a, b) => a.Minutes.CompareTo(b.Minutes));
        ChargeMinutes = Demand.Positive(chargeMinutes, nameof(chargeMinutes), "min");
        TemperatureC = Demand.TemperatureC(temperatureC, nameof(temperatureC));
        AbsorbedPerSMm3 = absorbedPerSMm3;
        McdM2PerPhotonPerSMm3 = mcdM2PerPhotonPerSMm3;
        CapacityPerMm3 = Demand.Positive(capacityPerMm3, nameof(capacityPerMm3), "per mm³");
    }

    /// <summary>The lines of the sheet in order of time.</summary>
    public ImmutableArray<SheetPoint> Points { get; }

    /// <summary>The last time the sheet tells, min: beyond it a ladder rests on its smoothing.</summary>
    public double ReachesMinutes => Points[^1].Minutes;

    /// <summary>How long the sample was lit, from empty traps, min.</summary>
    public double ChargeMinutes { get; }

    /// <summary>Temperature of charge and decay, °C.</summary>
    public double TemperatureC { get; }

    /// <summary>Photons absorbed per second and mm³ of pigment at each depth of the sample.</summary>
    public ImmutableArray<double> AbsorbedPerSMm3 { get; }

    /// <summary>What one photon emitted per second and mm³ of pigment at each depth adds to the luminance, mcd/m².</summary>
    public ImmutableArray<double> McdM2PerPhotonPerSMm3 { get; }

    /// <summary>Traps per mm³ of pigment, taken as known.</summary>
    public double CapacityPerMm3 { get; }
}
