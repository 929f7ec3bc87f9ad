using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Tests.Materials;

/// <summary>What the data sheet of materials computed from its sources, computed again from the shipped files.</summary>
public class FactSheetTests
{
    private static readonly Shelf Shelf = new();

    [Theory]
    [InlineData("green-aluminate", 520, 80, 415, 0.5, 2.92, 0.005)]
    [InlineData("violet-blue-aluminate", 442, 50, 26.5, 0.05, 23.2, 0.05)]
    [InlineData("green-sulfide", 530, 90, 451, 0.5, 2.38, 0.005)]
    public void Emission_bands_give_lumens_a_watt_and_scotopic_ratio_to_the_digits(
        string name,
        double peakNm,
        double fwhmNm,
        double lmPerW,
        double halfDigit,
        double scotopicRatio,
        double halfRatioDigit
    )
    {
        var pigment = Shelf.Pigment(name).Material!;
        Assert.Equal(peakNm, pigment.EmissionPeakNm.Value);
        Assert.Equal(fwhmNm, pigment.EmissionFwhmNm.Value);
        var figures = ColourFigures.Of(pigment.EmissionPerNm);
        Assert.Equal(lmPerW, figures.LuminousEfficacyLmPerW!.Value, tolerance: halfDigit);
        Assert.Equal(scotopicRatio, figures.ScotopicPhotopicRatio!.Value, tolerance: halfRatioDigit);
    }

    [Fact]
    public void The_blue_green_band_of_the_trade_at_490_nm_has_the_lumens_a_watt_of_the_sheet()
    {
        // The sheet's 216 lm/W and 6.16 belong to the trade's 490 nm; shipped is the published 495 nm, which is brighter.
        var trade = ColourFigures.Of(GaussianBand.PerNm(peakNm: 490, fwhmNm: 65));
        Assert.Equal(216, trade.LuminousEfficacyLmPerW!.Value, tolerance: 0.5);
        Assert.Equal(6.16, trade.ScotopicPhotopicRatio!.Value, tolerance: 0.005);
        Assert.Equal(495, Shelf.Pigment("blue-green-aluminate").Material!.EmissionPeakNm.Value);
    }

    [Fact]
    public void Density_of_strontium_aluminate_follows_from_its_unit_cell()
    {
        // Monoclinic cell, Å and degrees, four formula units; atomic masses of Sr, Al, O (IUPAC, from memory).
        double volumeCm3 = 5.1497 * 8.836 * 8.442 * Math.Sin(93.43 * Math.PI / 180) * 1e-24;
        double molarMassG = 87.62 + (2 * 26.98154) + (4 * 15.999);
        double density = 4 * molarMassG / (6.02214076e23 * volumeCm3);
        Assert.Equal(3.561, density, tolerance: 0.0005);
        Assert.Equal(
            density,
            Shelf.Pigment("green-aluminate").Material!.DensityGPerCm3.Value,
            tolerance: 0.005
        );
    }

    [Fact]
    public void Trap_capacity_is_1_6_percent_of_one_in_a_hundred_strontium_sites() =>
        Assert.Equal(
            0.016 * 0.01 * 6.02214076e23 / 205.58,
            Shelf.Pigment("green-aluminate").Material!.TrapCapacityPerG.Value,
            tolerance: 0.05e17
        );

    [Theory]
    [InlineData(450, 2.471)]
    [InlineData(520, 2.405)]
    [InlineData(650, 2.345)]
    public void Index_of_zinc_sulfide_is_that_of_Debenham_1984(int nm, double index) =>
        // 2.343 is printed at 656 nm; at 650 the same formula, worked by hand, gives 2.3448.
        Assert.Equal(
            index,
            At(Shelf.Pigment("green-sulfide").Material!.RefractiveIndex.Value, nm),
            tolerance: 0.0006
        );

    [Theory]
    [InlineData("silicone-clear", 400, 1.449)]
    [InlineData("silicone-clear", 450, 1.4421)]
    [InlineData("silicone-clear", 520, 1.4356)]
    [InlineData("silicone-clear", 650, 1.4289)]
    [InlineData("silicone-clear", 620, 1.430)]
    [InlineData("epoxy-clear-slow", 400, 1.553)]
    [InlineData("epoxy-clear-slow", 450, 1.544)]
    [InlineData("epoxy-clear-slow", 620, 1.528)]
    [InlineData("epoxy-clear-fast", 450, 1.544)]
    [InlineData("silicone-phenyl", 620, 1.528)]
    [InlineData("polyurethane-clear", 400, 1.507)]
    // The sheet prints 1.501 and 1.489: there the line D, 589 nm, stood for the 587.6 nm of its own formula.
    [InlineData("polyurethane-clear", 450, 1.5005)]
    [InlineData("polyurethane-clear", 620, 1.4885)]
    public void Resins_have_the_index_of_the_sheet(string name, int nm, double index) =>
        Assert.Equal(
            index,
            At(Shelf.Resin(name).Material!.RefractiveIndex.Value, nm),
            tolerance: index == Math.Round(index, 3) ? 0.0005 : 0.00005
        );

    [Fact]
    public void Resins_absorb_as_the_sheet_says_and_the_logarithm_is_straight_between()
    {
        var epoxy = Shelf.Resin("epoxy-clear-slow").Material!.AbsorptionPerMm.Value;
        Assert.Equal(0.020, At(epoxy, 400));
        Assert.Equal(0.008, At(epoxy, 420));
        Assert.Equal(0.004, At(epoxy, 450));
        Assert.Equal(0.002, At(epoxy, 500));
        Assert.Equal(0.001, At(epoxy, 650), tolerance: 1e-15);
        Assert.Equal(Math.Sqrt(0.020 * 0.008), At(epoxy, 410), tolerance: 1e-15);
    }

    [Theory]
    [InlineData("daylight-d65", 6504, 2)]
    [InlineData("fl2", 4225, 1)]
    [InlineData("fl7", 6489, 6)] // 6489.9 interpolated to 1 nm first, 6494.7 from the table's own 5 nm
    [InlineData("fl11", 4001, 3)] // 4000.7 against 3998.6
    [InlineData("fl12", 3003, 4)] // 3002.5 against 2999.6
    [InlineData("led-2700", 2735, 2)] // 2734.7 against 2733.4
    [InlineData("led-3000", 2999, 1.5)]
    [InlineData("led-4000", 4102, 1)]
    [InlineData("led-5000", 5106, 3.5)]
    [InlineData("led-6500", 6591, 7)]
    [InlineData("incandescent-a", 2856, 1)]
    public void Lamps_have_the_colour_temperature_of_their_tables(
        string name,
        double cctK,
        double toleranceK
    ) =>
        // The sheet took the 5 nm tables to 1 nm first; the model sums the tables' own rows, as the CIE does.
        Assert.Equal(
            cctK,
            ColourFigures.Of(Shelf.Lamp(name).Material!.RelativeSpectrum.Value).CctK!.Value,
            tolerance: toleranceK
        );

    [Theory]
    [InlineData("led-2700", 312, 0.095)]
    [InlineData("led-3000", 314, 0.115)]
    [InlineData("led-4000", 317, 0.193)]
    [InlineData("led-5000", 319, 0.251)]
    [InlineData("led-6500", 305, 0.312)]
    public void White_lamps_have_the_lumens_a_watt_and_the_blue_share_of_the_sheet(
        string name,
        double lmPerW,
        double blueShare
    )
    {
        var lamp = Shelf.Lamp(name).Material!;
        Assert.Equal(lmPerW, lamp.LmPerW, tolerance: 0.5);
        var spectrum = lamp.RelativeSpectrum.Value;
        double below490 = 0;
        for (int i = 0; WavelengthGrid.NmAt(i) <= 490; i++)
        {
            // The sheet summed at 1 nm and below 490: of the 5 nm around the sample, 2 (487.5 to 489.5).
            below490 += WavelengthGrid.NmAt(i) == 490 ? 0.4 * spectrum[i] : spectrum[i];
        }
        Assert.Equal(
            blueShare,
            below490 * WavelengthGrid.StepNm / spectrum.IntegralOverNm(),
            tolerance: 0.0005
        );
    }

    [Theory]
    [InlineData("incandescent-a", 0.25)]
    [InlineData("fl2", 0.56)]
    [InlineData("fl7", 0.88)]
    [InlineData("fl11", 0.46)]
    [InlineData("fl12", 0.32)]
    [InlineData("led-2700", 0.15)]
    [InlineData("led-3000", 0.18)]
    [InlineData("led-4000", 0.33)]
    [InlineData("led-5000", 0.43)]
    [InlineData("led-6500", 0.54)]
    public void Charging_photons_a_lux_from_380_nm_are_those_of_the_sheet(string name, double ofDaylight) =>
        Assert.Equal(
            ofDaylight,
            ChargingPhotonsPerLux(name) / ChargingPhotonsPerLux("daylight-d65"),
            tolerance: 0.005
        );

    [Theory]
    [InlineData("daylight-d65", 1.56e12)]
    [InlineData("fl2", 8.7e11)]
    [InlineData("led-6500", 8.4e11)]
    [InlineData("led-4000", 5.2e11)]
    [InlineData("led-2700", 2.3e11)]
    public void Charging_photons_at_1000_lx_are_those_of_the_sheet(string name, double perSMm2)
    {
        // h c in J nm: 1.98644586e-16.
        double photons = 1000 * ChargingPhotonsPerLux(name) / 1.98644586e-16 / 1e6;
        Assert.Equal(perSMm2, photons, tolerance: name == "daylight-d65" ? 0.005e12 : 0.05e11);
    }

    // ∫ E λ e dλ from 380 nm for 1 lx, e relative to 365 nm. The sheet summed at 1 nm from 380 nm on: of the 5 nm
    // around the sample at 380 nm it has 3 (379.5 to 382.5); and it counted nothing from 510 nm on.
    private static double ChargingPhotonsPerLux(string lamp)
    {
        var irradiance = Shelf.Lamp(lamp).Material!.WPerM2NmAtLux(1);
        var absorption = Shelf.Pigment("green-aluminate").Material!.AbsorptionPerMm.Value;
        double sum = 0;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            double nm = WavelengthGrid.NmAt(i);
            double weight =
                nm < 380 || nm >= 510 ? 0
                : nm == 380 ? 0.6
                : 1;
            sum += weight * irradiance[i] * nm * absorption[i] / At(absorption, 365);
        }
        return sum * WavelengthGrid.StepNm;
    }

    private static double At(Spectrum spectrum, int nm) =>
        spectrum[(nm - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm];
}
