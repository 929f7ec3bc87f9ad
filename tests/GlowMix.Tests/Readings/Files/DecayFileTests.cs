using GlowMix.Readings;

namespace GlowMix.Tests.Readings.Files;

public class DecayFileTests
{
    [Theory]
    [InlineData("time (s);mcd/m²\n60;100\n120;50\n600;9\n", DecayUnit.McdPerM2, new[] { 1.0, 2, 10 })]
    [InlineData("t [min]\tlux\n1\t10,5\n2\t5,2\n10\t0,9\n", DecayUnit.Lux, new[] { 1.0, 2, 10 })]
    [InlineData(
        "Zeit (min);Leuchtdichte (mcd/m²)\n10;0,9\n2;5,2\n1;10,5\n",
        DecayUnit.McdPerM2,
        new[] { 1.0, 2, 10 }
    )]
    [InlineData(
        "elapsed;cd/m2\n0:01:00;0.1\n0:02:00;0.05\n1:00:30;0.002\n",
        DecayUnit.McdPerM2,
        new[] { 1.0, 2, 60.5 }
    )]
    [InlineData("hours;mcd/m2\n0.5;40\n1;20\n2;9\n", DecayUnit.McdPerM2, new[] { 30.0, 60, 120 })]
    [InlineData(
        "time;lux\n23:58:00;9\n23:59:00;8\n0:03:00;4\n0:08:00;2\n",
        DecayUnit.Lux,
        new[] { 0.0, 1, 5, 10 }
    )]
    [InlineData(
        "time,lux\n11:58:00 PM,9\n11:59:00 PM,8\n12:03:00 AM,4\n12:08:00 AM,2\n",
        DecayUnit.Lux,
        new[] { 0.0, 1, 5, 10 }
    )]
    [InlineData(
        "time\tlux\n3/4/2026 12:58 p.m.\t9\n3/4/2026 12:59 p.m.\t8\n3/4/2026 1:03 p.m.\t4\n3/4/2026 1:08 p.m.\t2\n",
        DecayUnit.Lux,
        new[] { 0.0, 1, 5, 10 }
    )]
    [InlineData(
        "time,lux\n2026-03-04T23:58:00+01:00,9\n2026-03-04T23:59:00+01:00,8\n2026-03-05T00:03:00+01:00,4\n",
        DecayUnit.Lux,
        new[] { 0.0, 1, 5 }
    )]
    public void Times_and_units_are_found(string text, DecayUnit unit, double[] minutes)
    {
        DecayReading reading = ReadText.Decay(text);
        Assert.Equal(unit, reading.Unit);
        Assert.Equal(minutes, reading.Minutes.ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void Candelas_become_millicandelas_and_the_display_step_with_them()
    {
        DecayReading reading = ReadText.Decay("s;cd/m2\n60;0.125\n120;0.05\n");
        Assert.Equal([125, 50], reading.Values.ToArray());
        Assert.Equal(1, reading.DisplayStep, 1e-12);
    }

    [Fact]
    public void The_start_of_darkness_is_found_where_a_level_reading_falls()
    {
        DecayReading reading = ReadText.Decay(
            "clock;lux\n20:14:00;521\n20:14:30;519\n20:15:00;520\n20:15:30;81\n20:16:00;42\n20:20:00;8\n"
        );
        Assert.Equal([-1, -0.5, 0, 0.5, 1, 5], reading.Minutes.ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Contains(reading.Warnings, w => w.Code == "dark_start_guessed");
        Assert.False(reading.IsUsable(0));
        Assert.True(reading.IsUsable(3));
        DecayReading told = ReadText.Decay(
            "clock;lux\n20:15:30;81\n20:16:00;42\n20:20:00;8\n",
            new() { DarkFromMinutes = (20 * 60) + 15 }
        );
        Assert.Equal(0.5, told.Minutes[0], 1e-9);
    }

    [Fact]
    public void Few_steps_of_the_display_are_not_used()
    {
        DecayReading reading = ReadText.Decay("min;lux\n1;2.0\n2;1.1\n5;0.5\n10;0.4\n20;0.1\n");
        Assert.Equal(0.1, reading.DisplayStep, 1e-12);
        Assert.Equal([true, true, true, false, false], Enumerable.Range(0, 5).Select(reading.IsUsable));
    }

    [Fact]
    public void A_file_without_words_is_a_guess_that_is_told()
    {
        DecayReading reading = ReadText.Decay("1\t100\n2\t51\n5\t19\n60\t1.2\n");
        Assert.Equal(
            ["kind_guessed", "time_unit_guessed", "unit_guessed"],
            reading.Warnings.Select(w => w.Code)
        );
        Assert.Equal(DecayUnit.Relative, reading.Unit);
    }

    [Theory]
    [InlineData("charged 5 min at 300 lux\n1 min: 150 mcd/m2\n2 min: 82 mcd/m2\n10 min: 18.2 mcd/m2\n")]
    [InlineData("after 1 min: 150 mcd/m2\nafter 2 min: 82 mcd/m2\nafter 10 min: 18.2 mcd/m2\n")]
    [InlineData("nach 60 s 150 mcd/m²\nnach 2 min 82 mcd/m²\nnach 10 min 18,2 mcd/m²\n")]
    [InlineData("t = 1 min, L = 150 mcd/m²\nt = 2 min, L = 82 mcd/m²\nt = 10 min, L = 18.2 mcd/m²\n")]
    [InlineData("60 s -> 150 mcd/m2\n2 min -> 82 mcd/m2\n10 min -> 18.2 mcd/m2\n")]
    [InlineData("- 1min: 150mcd/m2\n- 2min: 82mcd/m2\n- 10min: 18.2mcd/m2\n")]
    [InlineData("time;brightness\n1 minute;150 mcd/m2\n2 minutes;82 mcd/m2\n10 minutes;18.2 mcd/m2\n")]
    [InlineData("1 min\t0.15 cd/m2\n2 min\t0.082 cd/m2\n1/6 h\t0.0182 cd/m2\n10 min\t0.0182 cd/m2\n")]
    public void Notes_with_units_are_read(string text)
    {
        DecayReading reading = ReadText.Decay(text, new() { IsLenient = true });
        Assert.Equal([1, 2, 10], reading.Minutes.ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal([150, 82, 18.2], reading.Values.ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(DecayUnit.McdPerM2, reading.Unit);
        Assert.DoesNotContain(reading.Warnings, w => w.Code is "time_unit_guessed" or "unit_guessed");
    }

    [Fact]
    public void Units_in_plural_are_relative() =>
        Assert.Equal(
            [150, 82, 1],
            ReadText
                .Decay("time;brightness\n1 min;150 units\n2 min;82 units\n60 min;1 unit\n")
                .Values.ToArray()
        );

    [Theory]
    [InlineData("1 h 30 min", 90)]
    [InlineData("1h30", 90)]
    [InlineData("2 h", 120)]
    [InlineData("95 min 30 s", 95.5)]
    [InlineData("1:30 h", 90)]
    public void Durations_have_parts(string cell, double minutes) =>
        Assert.Equal(
            minutes,
            ReadText.Decay($"time;mcd/m2\n30 s;200\n10 min;18\n{cell};1.5\n").Minutes[^1],
            1e-9
        );

    [Fact]
    public void Times_with_and_without_a_unit_are_refused() =>
        Assert.Contains(
            "some with a unit and some without",
            ReadText.Problem("time;mcd/m2\n30 s;200\n1 min;150\n2;82\n5;35\n"),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("t (ms);mcd/m2\n60000;150\n120000;82\n600000;18\n")]
    [InlineData("time (days);mcd/m2\n0.000694444444;150\n0.00138888889;82\n0.00694444444;18\n")]
    [InlineData("Время, мин;Яркость, мкд/м²\n1;150\n2;82\n10;18\n")]
    [InlineData("時間(分)\t輝度(mcd/m²)\n1\t150\n2\t82\n10\t18\n")]
    [InlineData("min;luminance in millicandela per square metre\n1;150\n2;82\n10;18\n")]
    [InlineData("min;mcd/m2\n10;18\n1;150\n2;82\n")]
    [InlineData("minutes in the dark;mcd/m2\n1;150\n2;82\n10;18\n")]
    [InlineData("time (min:s);mcd/m2\n1:00;150\n2:00;82\n10:00;18\n")]
    [InlineData("Longueur;temps_(min)\n150 mcd/m2;1\n82 mcd/m2;2\n18 mcd/m2;10\n")]
    [InlineData("charged at 1000 lx for 5 min\nmin;mcd/m2\n1;150\n2;82\n10;18\n")]
    public void Units_of_time_and_light_are_found(string text)
    {
        DecayReading reading = ReadText.Decay(text);
        Assert.Equal([1, 2, 10], reading.Minutes.ToArray(), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.Equal([150, 82, 18], reading.Values.ToArray());
        Assert.Equal(DecayUnit.McdPerM2, reading.Unit);
        Assert.DoesNotContain(reading.Warnings, w => w.Code is "time_unit_guessed" or "unit_guessed");
    }

    [Fact]
    public void The_lamp_of_the_charge_is_no_unit_of_the_readings() =>
        Assert.Equal(
            DecayUnit.Relative,
            ReadText.Decay("charged at 1000 lux for 5 min\nmin;reading\n1;150\n2;82\n10;18\n").Unit
        );

    [Fact]
    public void Times_before_darkness_are_below_zero()
    {
        DecayReading reading = ReadText.Decay("min;mcd/m2\n-2;9000\n-1;9010\n0;9005\n1;150\n2;82\n10;18\n");
        Assert.Equal([-2, -1, 0, 1, 2, 10], reading.Minutes.ToArray());
    }

    [Fact]
    public void Seconds_since_1970_begin_at_the_first()
    {
        DecayReading reading = ReadText.Decay(
            "unix time (s);lux\n1773497000;9\n1773497060;5\n1773497600;1\n"
        );
        Assert.Equal([0, 1, 10], reading.Minutes.ToArray());
        Assert.Contains(reading.Warnings, w => w.Code == "dark_start_guessed");
    }

    [Fact]
    public void Without_names_the_rounder_column_holds_the_times()
    {
        DecayReading reading = ReadText.Decay("150.3\t1\n82.1\t2\n18.22\t10\n");
        Assert.Equal([1, 2, 10], reading.Minutes.ToArray());
    }
}
