using System.Collections.Immutable;

namespace GlowMix.Afterglow;

/// <summary>Some minutes of constant light, or of darkness, at one temperature. Immutable.</summary>
public sealed record ChargeStep
{
    private ChargeStep(
        bool isLit,
        ImmutableArray<double> absorbedPerSMm3,
        double minutes,
        double temperatureC
    )
    {
        IsLit = isLit;
        AbsorbedPerSMm3 = absorbedPerSMm3;
        Minutes = Demand.NotNegative(minutes, nameof(minutes), "min");
        TemperatureC = Demand.TemperatureC(temperatureC, nameof(temperatureC));
    }

    /// <summary>Whether a light is on, also one that the pigment does not absorb: the glow clock starts when it goes off.</summary>
    public bool IsLit { get; }

    /// <summary>Photons absorbed per second and mm³ of pigment at each depth; empty in the dark.</summary>
    public ImmutableArray<double> AbsorbedPerSMm3 { get; }

    /// <summary>How long, min.</summary>
    public double Minutes { get; }

    /// <summary>Temperature of the piece, °C.</summary>
    public double TemperatureC { get; }

    /// <summary>A step with a light on.</summary>
    /// <param name="absorbedPerSMm3">Photons absorbed per second and mm³ of pigment at each depth; all 0 where the light does not reach.</param>
    /// <param name="minutes">How long, min.</param>
    /// <param name="temperatureC">Temperature of the piece, °C.</param>
    public static ChargeStep Lit(ReadOnlySpan<double> absorbedPerSMm3, double minutes, double temperatureC)
    {
        Demand.NoneNegative(absorbedPerSMm3, nameof(absorbedPerSMm3), "photons/(s mm³)");
        return new(true, [.. absorbedPerSMm3], minutes, temperatureC);
    }

    /// <summary>A step without light.</summary>
    /// <param name="minutes">How long, min.</param>
    /// <param name="temperatureC">Temperature of the piece, °C.</param>
    public static ChargeStep Dark(double minutes, double temperatureC) =>
        new(false, [], minutes, temperatureC);
}
