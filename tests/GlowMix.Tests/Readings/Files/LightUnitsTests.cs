using GlowMix.Readings;
using GlowMix.Readings.Files;

namespace GlowMix.Tests.Readings.Files;

public class LightUnitsTests
{
    // By the prefixes of the SI; 1 W/m³ is 1 W/m² per metre of wavelength.
    [Theory]
    [InlineData("W/m²/nm", 1)]
    [InlineData("spectrum W/m²/nm", 1)]
    [InlineData("irradiance in W/m2/nm", 1)]
    [InlineData("mW/m²/nm", 1e-3)]
    [InlineData("mW m-2 nm-1", 1e-3)]
    [InlineData("µW·cm⁻²·nm⁻¹", 1e-2)]
    [InlineData("uW/cm^2/nm", 1e-2)]
    [InlineData("nW/cm²/nm", 1e-5)]
    [InlineData("kW/m²/nm", 1e3)]
    [InlineData("W/(m²·nm)", 1)]
    [InlineData("W/nm/m²", 1)]
    [InlineData("W/m²/µm", 1e-3)]
    [InlineData("W/m³", 1e-9)]
    [InlineData("irr_W_m2_nm", 1)]
    [InlineData("milliwatts per square metre per nanometre", 1e-3)]
    public void Power_is_found_with_its_factor(string name, double factor)
    {
        LightUnit? unit = LightUnits.Of(name);
        Assert.Equal(SpectralUnit.WPerM2Nm, unit?.Unit);
        Assert.Equal(factor, unit!.Factor, 1e-9 * factor);
    }

    [Theory]
    [InlineData("W/sr/m²/nm")]
    [InlineData("W·sr⁻¹·m⁻²·nm⁻¹")]
    [InlineData("mW/nm")]
    [InlineData("E (×10⁻³ W/m²/nm)")]
    [InlineData("E (10^-3 W m^-2 nm^-1)")]
    [InlineData("1E-3 W/m²/nm")]
    [InlineData("mW/m²/10nm")]
    [InlineData("rel. intensity")]
    public void What_makes_no_irradiance_is_relative(string name) =>
        Assert.Equal(SpectralUnit.Relative, LightUnits.Of(name)?.Unit);

    [Theory]
    [InlineData("nm;value", "total irradiance: 3.2 W/m2")]
    [InlineData("nm;value", "charged at 12 mW/cm2 for 5 min")]
    public void A_figure_above_the_table_is_no_unit_of_it(string header, string line) =>
        Assert.Equal(
            SpectralUnit.Relative,
            ReadText.Spectrum($"{line}\n{header}\n400;1\n500;3\n600;2\n").Unit
        );
}
