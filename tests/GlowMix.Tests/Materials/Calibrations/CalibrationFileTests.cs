using System.Text;
using GlowMix.Documents;
using GlowMix.Materials.Calibrations;

namespace GlowMix.Tests.Materials.Calibrations;

public sealed class CalibrationFileTests
{
    private static readonly string Text = CalibrationText.Of(SampleCalibration.Whole);

    [Fact]
    public void A_calibration_reads_back_as_it_was_written()
    {
        var (calibration, problems) = CalibrationFile.Read(new FileText("a.calibration.yaml", Text));
        Assert.Empty(problems);
        Assert.Equal(Text, CalibrationText.Of(calibration!));
        Assert.Equal(SampleCalibration.Whole.Readings, calibration!.Readings);
        Assert.Equal(SampleCalibration.Whole.Led!.ReturnEntries, calibration.Led!.ReturnEntries);
        Assert.Equal(SampleCalibration.Whole.Pigments[0].Traps!.PerG, calibration.Pigments[0].Traps!.PerG);
        Assert.Equal(11, calibration.Pigments[0].Traps!.MiddleMinutes);
        Assert.Equal(SampleCalibration.Whole.Correlations, calibration.Correlations);
    }

    [Theory]
    [InlineData(
        "calibration_format: 1",
        "calibration_format: 2",
        ":1:21: calibration_format is 2; allowed: 1"
    )]
    [InlineData("calibration_format: 1\n", "", ": needed: 'calibration_format: 1' as the first key")]
    [InlineData(
        "date: 2026-03-31",
        "date: 31.3.2026",
        "date is '31.3.2026'; allowed: a day as year-month-day"
    )]
    [InlineData("sha256: aaaa", "sha256: AAAA", "sha256 is no SHA-256")]
    [InlineData("value: 0.28", "value: 0.68", "leaves it 1.15 times, in all bands together; allowed: 0 to 1")]
    [InlineData("value: 1.4\n", "value: -1.4\n", "value is -1.4; allowed: 0.001 to 1000")]
    [InlineData("standard_error: 0.1\n", "standard_error: .nan\n", "standard_error is '.nan'")]
    [InlineData("        - 4E+16\n", "", "per_g has 12 items; allowed: 13")]
    [InlineData(
        "yield:",
        "yeild:",
        "unknown key 'photoluminescence_yeild'; did you mean 'photoluminescence_yield'?"
    )]
    [InlineData("value: -0.800", "value: -1.8", "value is -1.8; allowed: -1 to 1")]
    [InlineData(
        "with: green-aluminate.trap_level",
        "with: green-aluminate.trapping_factor",
        "with is 'green-aluminate.trapping_factor', no number with a standard error above; there are led.conversion,"
    )]
    [InlineData(
        "with: green-aluminate.trap_level",
        "with: green-aluminate.photoluminescence_yield",
        "'green-aluminate.photoluminescence_yield' goes with itself"
    )]
    [InlineData(
        "held:\n",
        "  - of: green-aluminate.trap_level\n    with: green-aluminate.photoluminescence_yield\n    value: 0.1\nheld:\n",
        "'green-aluminate.trap_level' with 'green-aluminate.photoluminescence_yield' stands here twice"
    )]
    [InlineData(
        "held:\n",
        "  - of: green-aluminate.trap_level\n    with: green-aluminate.trap_tilt\n    value: 0.9\n"
            + "  - of: green-aluminate.photoluminescence_yield\n    with: green-aluminate.trap_tilt\n    value: 0.9\nheld:\n",
        "these correlations contradict each other"
    )]
    public void What_is_wrong_with_a_calibration_is_told_with_its_place(
        string written,
        string instead,
        string problem
    )
    {
        Assert.Contains(written, Text, StringComparison.Ordinal);
        var (calibration, problems) = CalibrationFile.Read(
            new FileText("a.calibration.yaml", Text.Replace(written, instead, StringComparison.Ordinal))
        );
        Assert.Null(calibration);
        Assert.Contains(problems, p => p.ToString().Contains(problem, StringComparison.Ordinal));
    }

    [Fact]
    public void A_hash_is_that_of_FIPS_180_4() =>
        // The one-block example of FIPS 180-4 (2015), SHA-256 of 'abc'; as printed in the standard's example file.
        Assert.Equal(
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
            Sha256.Of(Encoding.ASCII.GetBytes("abc"))
        );
}
