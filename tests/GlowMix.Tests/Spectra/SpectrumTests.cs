using GlowMix.Spectra;

namespace GlowMix.Tests.Spectra;

public class SpectrumTests
{
    [Fact]
    public void The_grid_runs_from_340_to_780_nm_in_89_steps_of_5()
    {
        Assert.Equal(89, WavelengthGrid.Count);
        Assert.Equal(340, WavelengthGrid.NmAt(0));
        Assert.Equal(780, WavelengthGrid.NmAt(88));
    }

    [Fact]
    public void A_sample_that_is_no_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => Spectrum.FromNm(nm => nm == 500 ? double.NaN : 1));

    [Fact]
    public void The_integral_of_one_is_the_number_of_samples_times_the_step() =>
        Assert.Equal(445, Spectrum.Constant(1).IntegralOverNm());
}
