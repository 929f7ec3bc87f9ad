using GlowMix.Readings;
using GlowMix.Readings.Decay;
using GlowMix.Tests.Readings.Files;

namespace GlowMix.Tests.Readings.Decay;

public class DecayFiguresTests
{
    private static readonly int[] Minutes = [1, 2, 5, 10, 20, 50];

    [Fact]
    public void One_lux_in_contact_is_318_mcd_per_m2() =>
        // E = π L for a Lambertian surface that covers the sensor.
        Assert.Equal(318.3, MeterGeometry.Contact.McdPerM2PerLux, 0.05);

    [Fact]
    public void A_mask_counts_the_hole_over_the_sensor()
    {
        Assert.Equal(
            MeterGeometry.Contact.McdPerM2PerLux,
            MeterGeometry.ContactMask(holeMm: 8, sensorMm: 8).McdPerM2PerLux,
            1e-9
        );
        Assert.Equal(
            4 * MeterGeometry.Contact.McdPerM2PerLux,
            MeterGeometry.ContactMask(holeMm: 4, sensorMm: 8).McdPerM2PerLux,
            1e-9
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => MeterGeometry.ContactMask(9, 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeterGeometry.ContactMask(0, 8));
    }

    [Fact]
    public void A_disc_is_contact_near_by_and_a_point_far_away()
    {
        Assert.Equal(
            MeterGeometry.Contact.McdPerM2PerLux,
            MeterGeometry.DiscAt(discMm: 50, distanceMm: 0).McdPerM2PerLux,
            1e-9
        );
        // Far away E = L × area / d².
        double far = 1000 / (Math.PI * 25 * 25 / (5000.0 * 5000));
        Assert.Equal(1, MeterGeometry.DiscAt(discMm: 50, distanceMm: 5000).McdPerM2PerLux / far, 1e-4);
        Assert.Throws<ArgumentOutOfRangeException>(() => MeterGeometry.DiscAt(50, -1));
    }

    [Fact]
    public void A_power_law_gives_its_exponent_and_its_end()
    {
        string rows = string.Concat(
            Minutes.Select(t => FormattableString.Invariant($"{t};{120 * Math.Pow(t, -1.1):R}\n"))
        );
        DecayFigures figures = DecayFigures.Of(ReadText.Decay("min;mcd/m2\n" + rows));
        Assert.Equal(1.1, figures.Exponent!.Value, 1e-9);
        Assert.Equal(0, figures.ExponentError!.Value, 1e-9);
        Assert.Equal(Math.Pow(120 / 0.3, 1 / 1.1), figures.MinutesToLimit!.Value, 1e-6);
        Assert.True(figures.IsExtrapolated);
    }

    [Fact]
    public void The_end_between_two_readings_lies_on_the_line_of_their_logarithms()
    {
        DecayFigures figures = DecayFigures.Of(ReadText.Decay("min;mcd/m2\n10;3.000\n100;0.030\n"));
        Assert.Equal(Math.Sqrt(10 * 100), figures.MinutesToLimit!.Value, 1e-9);
        Assert.False(figures.IsExtrapolated);
    }

    [Fact]
    public void A_glow_that_never_was_above_has_0_minutes_and_a_relative_one_none()
    {
        Assert.Equal(0, DecayFigures.Of(ReadText.Decay("min;mcd/m2\n1;0.200\n2;0.100\n")).MinutesToLimit);
        Assert.Null(DecayFigures.Of(ReadText.Decay("min;relative\n1;0.200\n2;0.100\n")).MinutesToLimit);
    }

    [Fact]
    public void A_meter_of_a_tenth_of_a_lux_in_contact_tells_no_less_than_160_mcd()
    {
        DecayReading lux = ReadText.Decay("min;lux\n1;2.0\n2;1.1\n5;0.5\n10;0.4\n");
        DecayFigures figures = DecayFigures.Of(MeterGeometry.Contact.ToLuminance(lux));
        Assert.Equal(159.2, figures.LeastMcdPerM2!.Value, 0.05);
        Assert.Equal(1, figures.TooFewSteps);
        Assert.Contains(figures.Warnings, w => w.Code == "too_few_steps");
        Assert.Equal(2000 / Math.PI, figures.Reading.Values[0], 1e-9);
        Assert.Equal(DecayUnit.McdPerM2, figures.Reading.Unit);
    }
}
