namespace GlowMix.Readings.Decay;

/// <summary>
/// How a light meter looks at a glowing surface: what makes a luminance of its lux. The surface glows as a Lambertian one, the
/// same all over.
/// </summary>
public sealed record MeterGeometry
{
    private const double McdPerCd = 1000;

    private MeterGeometry(string words, double luxPerCdPerM2) =>
        (Words, LuxPerCdPerM2) = (words, luxPerCdPerM2);

    /// <summary>In words: 'contact'.</summary>
    public string Words { get; }

    /// <summary>Illuminance at the meter for a luminance of 1 cd/m², lx.</summary>
    public double LuxPerCdPerM2 { get; }

    /// <summary>Luminance for 1 lx at the meter, mcd/m².</summary>
    public double McdPerM2PerLux => McdPerCd / LuxPerCdPerM2;

    /// <summary>The glow covers the whole sensor: E = π L, 1 lx is 318 mcd/m².</summary>
    public static MeterGeometry Contact { get; } = new("contact", Math.PI);

    /// <summary>On the surface, with a hole in a black mask in front of the sensor: E = π L × hole / sensor area.</summary>
    /// <param name="holeMm">Diameter of the hole, mm, above 0.</param>
    /// <param name="sensorMm">Diameter of the sensor, mm, that of the hole at least.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter out of its range.</exception>
    public static MeterGeometry ContactMask(double holeMm, double sensorMm)
    {
        if (holeMm is not (> 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(nameof(holeMm), holeMm, "A hole is wider than 0 mm.");
        }
        if (!(sensorMm >= holeMm) || !double.IsFinite(sensorMm))
        {
            throw new ArgumentOutOfRangeException(
                nameof(sensorMm),
                sensorMm,
                "A sensor is as wide as the hole at least."
            );
        }
        double share = holeMm / sensorMm;
        return new(
            ReadingTexts.Invariant($"contact with a mask, hole {holeMm:0.##} mm, sensor {sensorMm:0.##} mm"),
            Math.PI * share * share
        );
    }

    /// <summary>Square in front of a glowing disc: E = π L r² / (r² + d²).</summary>
    /// <param name="discMm">Diameter of the disc, mm, above 0.</param>
    /// <param name="distanceMm">From the disc to the sensor, mm, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length out of its range.</exception>
    public static MeterGeometry DiscAt(double discMm, double distanceMm)
    {
        if (discMm is not (> 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(nameof(discMm), discMm, "A disc is wider than 0 mm.");
        }
        if (distanceMm is not (>= 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(
                nameof(distanceMm),
                distanceMm,
                "A distance is 0 mm or more."
            );
        }
        double radius = discMm / 2;
        return new(
            ReadingTexts.Invariant($"a disc of {discMm:0.##} mm seen from {distanceMm:0.##} mm"),
            Math.PI * radius * radius / ((radius * radius) + (distanceMm * distanceMm))
        );
    }

    /// <summary>A reading in lx as luminance; one in another unit as it is.</summary>
    public DecayReading ToLuminance(DecayReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Unit != DecayUnit.Lux
            ? reading
            : reading with
            {
                Unit = DecayUnit.McdPerM2,
                Values = [.. reading.Values.Select(lux => lux * McdPerM2PerLux)],
                DisplayStep = reading.DisplayStep * McdPerM2PerLux,
            };
    }
}
