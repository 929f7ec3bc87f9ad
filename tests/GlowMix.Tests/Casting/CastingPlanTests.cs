using GlowMix.Casting;
using GlowMix.Materials;

namespace GlowMix.Tests.Casting;

public class CastingPlanTests
{
    private static readonly CastingPigment Green = new(3.56, new GrainClasses(40, 1.5), GrainPacking.Crushed);

    private static readonly CastingResin Epoxy = new(
        1.10,
        new MixRatio(IsByVolume: false, 2, 1).MassShareOfA(1.14, 0.99),
        new ResinFlow([new(600, 25)], [new(100, 150, 25)], gelTimeMin: 300)
    );

    private static readonly CastingPour Strip = new()
    {
        LengthMm = 500,
        WidthMm = 12,
        PackageCount = 60,
        PackageLengthMm = 3.5,
        PackageWidthMm = 2.8,
        PackageHeightMm = 0.7,
    };

    private static readonly CastingLayer Glow = new("glow", 2.5, Green, PigmentLoading.FromPercentByMass(20));
    private static readonly CastingLayer Cover = new("cover", 0.5);
    private static readonly Mixing Priced = new() { ResinPerKg = 28, PigmentPerKg = 190 };

    [Fact]
    public void A_strip_of_500_by_12_mm_by_hand()
    {
        var plan = CastingPlan.Of(Strip, [Glow, Cover], Epoxy, Priced);

        // 500 · 12 · 2.5 = 15 000 mm³ less 60 · 3.5 · 2.8 · 0.7 = 411.6 mm³; a tenth more for waste.
        LayerBatch glow = plan.Layers[0];
        Assert.Equal(14.5884, glow.PourVolumeMl!.Value, tolerance: 1e-9);
        Assert.Equal(16.04724, glow.MixVolumeMl!.Value, tolerance: 1e-9);

        // 1 / (0.2/3.56 + 0.8/1.10) = 1.276402 g/cm³: 20.48273 g, a fifth of it pigment, the rest 2:1.
        Assert.Equal(4.09655, glow.PigmentG!.Value, tolerance: 1e-5);
        Assert.Equal(10.92412, glow.PartAG!.Value, tolerance: 1e-5);
        Assert.Equal(5.46206, glow.PartBG!.Value, tolerance: 1e-5);
        Assert.Equal(7.17, glow.PigmentVolumePercent, tolerance: 0.005);

        // 500 · 12 · 0.5 = 3 ml, 3.3 ml with waste, 3.63 g.
        Assert.Equal(2.42, plan.Layers[1].PartAG!.Value, tolerance: 1e-9);
        Assert.Equal(1.21, plan.Layers[1].PartBG!.Value, tolerance: 1e-9);
        Assert.Equal(0, plan.Layers[1].PigmentG);

        Assert.Equal(19.34724, plan.MixVolumeMl!.Value, tolerance: 1e-9);
        Assert.Equal(13.34412, plan.PartAG!.Value, tolerance: 1e-5);
        Assert.Equal(4.09655, plan.PigmentG!.Value, tolerance: 1e-5);
        Assert.Equal(25, plan.PigmentGPer100GResin, tolerance: 1e-9);

        // (16.38618 + 3.63) g at 28 and 4.09655 g at 190 per kg
        Assert.Equal(1.33880, plan.Cost!.Value, tolerance: 1e-5);
    }

    [Fact]
    public void Masses_make_up_the_mixed_volume()
    {
        LayerBatch glow = CastingPlan.Of(Strip, [Glow], Epoxy, Priced).Layers[0];
        double volume = ((glow.PartAG + glow.PartBG) / 1.10 + (glow.PigmentG / 3.56))!.Value;
        Assert.Equal(glow.MixVolumeMl!.Value, volume, tolerance: 1e-12 * volume);
        Assert.Equal(
            0.2,
            (glow.PigmentG / (glow.PartAG + glow.PartBG + glow.PigmentG))!.Value,
            tolerance: 1e-12
        );
    }

    [Fact]
    public void Packages_taller_than_the_first_layer_reach_into_the_second()
    {
        CastingPour tall = Strip with { PackageHeightMm = 3 };
        Assert.Equal(15 - 1.47, tall.LayerVolumeMl(0, 2.5)!.Value, tolerance: 1e-12);
        Assert.Equal(6 - 0.294, tall.LayerVolumeMl(2.5, 1)!.Value, tolerance: 1e-12);
        Assert.Equal(6, tall.LayerVolumeMl(3.5, 1)!.Value, tolerance: 1e-12);
    }

    [Fact]
    public void Parts_by_volume_go_through_their_densities() =>
        // 2 · 1.14 / (2 · 1.14 + 0.99) by hand
        Assert.Equal(
            0.697248,
            new MixRatio(IsByVolume: true, 2, 1).MassShareOfA(1.14, 0.99),
            tolerance: 5e-7
        );

    [Theory]
    [InlineData(null, 12.0, 60)]
    [InlineData(500.0, null, 60)]
    [InlineData(500.0, 12.0, null)]
    public void Without_a_size_there_are_no_masses_but_the_flow_is_known(
        double? lengthMm,
        double? widthMm,
        int? count
    )
    {
        CastingPour unknown = Strip with { LengthMm = lengthMm, WidthMm = widthMm, PackageCount = count };
        var plan = CastingPlan.Of(unknown, [Glow, Cover], Epoxy, Priced);
        Assert.Null(plan.MixVolumeMl);
        Assert.Null(plan.PartAG);
        Assert.Null(plan.PigmentG);
        Assert.Null(plan.Cost);
        Assert.Null(plan.Layers[0].Weighed(0.1));
        Assert.Equal(25, plan.PigmentGPer100GResin, tolerance: 1e-9);
        Assert.NotNull(plan.ViscosityMPaS);
        Assert.True(plan.SettledMm > 0);
    }

    [Fact]
    public void Without_the_pigments_price_only_a_clear_pour_has_a_cost()
    {
        Mixing noPigmentPrice = Priced with { PigmentPerKg = null };
        Assert.Null(CastingPlan.Of(Strip, [Glow, Cover], Epoxy, noPigmentPrice).Cost);
        Assert.NotNull(CastingPlan.Of(Strip, [Cover], Epoxy, noPigmentPrice).Cost);
        Assert.Null(CastingPlan.Of(Strip, [Cover], Epoxy, new Mixing()).Cost);
    }

    [Fact]
    public void The_degas_window_is_pot_life_less_stirring_and_vacuum()
    {
        Mixing warm = new() { TemperatureC = 35, VacuumMin = 15 };
        Assert.Equal(50 - 5 - 15, CastingPlan.Of(Strip, [Glow], Epoxy, warm).DegasWindowMin, tolerance: 1e-9);
        Mixing tooLong = warm with { VacuumMin = 60 };
        Assert.Equal(-15, CastingPlan.Of(Strip, [Glow], Epoxy, tooLong).DegasWindowMin, tolerance: 1e-9);
    }

    [Fact]
    public void Viscosity_is_that_of_the_resin_thickened_by_the_pigment()
    {
        var plan = CastingPlan.Of(Strip, [Glow, Cover], Epoxy, new Mixing { TemperatureC = 25 });
        double fraction = plan.Layers[0].VolumeFraction;
        double expected = 600 * Math.Pow(1 - (fraction / 0.54), -3.5 * 0.54);
        Assert.Equal(expected, plan.ViscosityMPaS!.Value, tolerance: 1e-9);
        Assert.Equal(600, plan.Layers[1].ViscosityMPaS!.Value, tolerance: 1e-9);
    }

    [Fact]
    public void A_mix_too_dense_does_not_pour_and_does_not_settle()
    {
        CastingLayer paste = Glow with { Loading = PigmentLoading.FromPercentByMass(80) };
        var plan = CastingPlan.Of(Strip, [paste, Cover], Epoxy, Priced);
        Assert.False(plan.Layers[0].Pours);
        Assert.Null(plan.ViscosityMPaS);
        Assert.Equal(0, plan.SettledMm);
        Assert.Single(plan.Layers[0].Settled()!.FromTheBedUp);
    }

    [Fact]
    public void Grains_of_40_um_fall_millimetres_in_a_slow_epoxy()
    {
        CastingLayer deep = Glow with { DepthMm = 30 };
        double settled = CastingPlan.Of(Strip, [deep], Epoxy, new Mixing { TemperatureC = 25 }).SettledMm;

        // 2 · 2460 · 9.80665 · 4e-10 / (9 · 0.6) m/s, (1 − 0.0717)^5.6, and 20 to 300 min at a doubling in 100 min.
        double fresh = 0.21444 * Math.Pow(1 - 0.0717079, 5.6);
        double expected = fresh * 100 / Math.Log(2) * (Math.Pow(2, -0.2) - Math.Pow(2, -3));
        Assert.Equal(expected, settled, tolerance: 0.001 * expected);
        Assert.InRange(settled, 5, 20);
    }

    [Fact]
    public void What_settles_stops_on_the_bed()
    {
        LayerBatch glow = CastingPlan.Of(Strip, [Glow], Epoxy, Priced).Layers[0];
        double bedMm = 2.5 * glow.VolumeFraction / (0.9 * 0.54);
        Assert.Equal(2.5 - bedMm, glow.SettledMm, tolerance: 1e-12);
        Assert.Equal(2.5, glow.Settled()!.FromTheBedUp.Sum(s => s.ThicknessMm), tolerance: 1e-12);
        Assert.Null(CastingPlan.Of(Strip, [Cover], Epoxy, Priced).Layers[0].Settled());
    }

    [Fact]
    public void Colder_mixing_is_thicker_and_slower_to_set()
    {
        var cold = CastingPlan.Of(Strip, [Glow], Epoxy, new Mixing { TemperatureC = 15 });
        var warm = CastingPlan.Of(Strip, [Glow], Epoxy, new Mixing { TemperatureC = 30 });
        Assert.True(cold.ViscosityMPaS > warm.ViscosityMPaS);
        Assert.True(cold.DegasWindowMin > warm.DegasWindowMin);
    }

    [Fact]
    public void A_heavy_mix_is_told()
    {
        CastingPour large = Strip with { WidthMm = 400 };
        Assert.True(CastingPlan.Of(large, [Glow], Epoxy, Priced).Layers[0].IsHeavierThanSheet);
        Assert.False(CastingPlan.Of(Strip, [Glow], Epoxy, Priced).Layers[0].IsHeavierThanSheet);
    }

    [Fact]
    public void Three_pieces_from_one_mix_take_three_times_as_much_and_set_sooner()
    {
        var epoxy = new CastingResin(
            1.10,
            Epoxy.MassShareOfPartA,
            new ResinFlow([new(600, 25)], [new(100, 10, 25), new(50, 1000, 25)], gelTimeMin: 300)
        );
        LayerBatch one = CastingPlan.Of(Strip, [Glow], epoxy, Priced).Layers[0];
        LayerBatch three = CastingPlan.Of(Strip, [Glow], epoxy, Priced with { Pieces = 3 }).Layers[0];
        Assert.Equal(3 * one.PartAG!.Value, three.PartAG!.Value, tolerance: 1e-12);
        Assert.Equal(3 * one.PigmentG!.Value, three.PigmentG!.Value, tolerance: 1e-12);
        Assert.Equal(3 * one.Cost!.Value, three.Cost!.Value, tolerance: 1e-12);
        Assert.Equal(one.PourVolumeMl, three.PourVolumeMl);
        Assert.True(three.PotLifeMin < one.PotLifeMin);
        Assert.Throws<ArgumentOutOfRangeException>(() => Priced with { Pieces = 0 });
    }

    [Fact]
    public void What_cannot_be_cast_is_refused_with_its_reason()
    {
        Assert.Throws<ArgumentException>(() => CastingPlan.Of(Strip, [], Epoxy, Priced));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            CastingPlan.Of(Strip, [Cover with { DepthMm = 0 }], Epoxy, Priced)
        );
        Assert.Throws<ArgumentException>(() =>
            CastingPlan.Of(Strip, [Cover with { Loading = Glow.Loading }], Epoxy, Priced)
        );
        string crowded = Assert
            .Throws<ArgumentException>(() =>
                CastingPlan.Of(Strip with { PackageCount = 1000 }, [Glow], Epoxy, Priced)
            )
            .Message;
        Assert.Contains("1000 packages of 3.5 × 2.8 mm", crowded, StringComparison.Ordinal);
        CastingPigment floats = new(1.0, Green.Grains, Green.Packing);
        Assert.Throws<ArgumentException>(() =>
            CastingPlan.Of(Strip, [Glow with { Pigment = floats }], Epoxy, Priced)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Strip with { LengthMm = double.NaN });
    }
}
