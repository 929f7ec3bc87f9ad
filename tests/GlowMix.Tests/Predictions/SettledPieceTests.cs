using GlowMix.Casting;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Tests.Predictions;

/// <summary>Grains that sink before the resin gels, in all figures of light.</summary>
public class SettledPieceTests
{
    /// <summary>Fine pigment in a deep pour of slow epoxy: falls by half the depth.</summary>
    private static readonly TestRecipe Slow = new()
    {
        Layers = Glow(5, 10, grainUm: 15),
        Steps = TestRecipe.Lamp("daylight-d65", 300, 20),
    };

    private static readonly TestRecipe Flat = Slow with { Led = "flat-warm-white-3000" };

    public static TheoryData<double, double, double, string> Pours =>
        new()
        {
            { 2.5, 20, 40, "epoxy-clear-slow" },
            { 5, 10, 15, "epoxy-clear-slow" },
            { 2.5, 20, 15, "silicone-clear" },
            { 4, 45, 20, "polyurethane-clear" },
            { 3, 75, 30, "epoxy-clear-fast" },
        };

    [Theory, MemberData(nameof(Pours))]
    public void Each_layer_keeps_its_depth_and_its_pigment(
        double depthMm,
        double percent,
        double grainUm,
        string resin
    )
    {
        foreach (string face in (string[])["up", "down"])
        {
            var piece = PieceOf(
                new TestRecipe
                {
                    Resin = resin,
                    Face = face,
                    Layers = TestRecipe.Clear(0.9) + Glow(depthMm, percent, grainUm) + TestRecipe.Clear(0.5),
                }
            );
            var layers = GelledLayers.Of(piece, new OpticsShelf()).ToArray();
            double pigmentMm = depthMm * piece.Layers[1].VolumeFraction;
            Assert.Equal(depthMm + 1.4, layers.Sum(l => l.DepthMm), tolerance: 1e-12 * depthMm);
            Assert.Equal(
                pigmentMm,
                layers.Sum(l => l.DepthMm * l.VolumeFraction),
                tolerance: 1e-12 * pigmentMm
            );
            Assert.InRange(layers.Length, 3, 9);
        }
    }

    [Fact]
    public void All_slices_together_take_in_as_much_as_the_mix_that_was_poured()
    {
        var piece = PieceOf(Slow);
        var optics = new OpticsShelf();
        var settled = LayersOf(piece).Where(l => l.HasPigment).ToArray();
        var poured = LayersOf(piece with { IsSettled = false }).Single();
        Assert.True(settled.Length > 3);
        IEnumerable<PourLayer> LayersOf(Piece p) => PieceLight.StackOf(p, optics).WithPigmentScaled(2).Layers;
        for (int i = 0; i < 89; i += 8)
        {
            double Sum(Func<PourLayer, double> perMm) =>
                settled.Sum(l => l.DepthMm * l.VolumeFraction * perMm(l));
            double all = poured.DepthMm * poured.VolumeFraction;
            double absorbed = all * poured.Grains!.AbsorptionPerMm[i];
            double scattered = all * poured.Grains.ScatteringPerMm[i];
            Assert.Equal(absorbed, Sum(l => l.Grains!.AbsorptionPerMm[i]), tolerance: 1e-12 * absorbed);
            Assert.Equal(scattered, Sum(l => l.Grains!.ScatteringPerMm[i]), tolerance: 1e-12 * scattered);
        }
        // Coarse grains lie below, and scatter less.
        Assert.True(settled[0].Grains!.ScatteringPerMm[36] < settled[^1].Grains!.ScatteringPerMm[36]);
    }

    [Fact]
    public void Face_up_the_bed_lies_on_the_board_and_face_down_at_the_viewing_face()
    {
        var optics = new OpticsShelf();
        var up = GelledLayers.Of(PieceOf(Slow), optics).ToArray();
        var down = GelledLayers.Of(PieceOf(Slow with { Face = "down" }), optics).ToArray();
        Assert.Equal(GrainPacking.Crushed.BedFraction, up[0].VolumeFraction, tolerance: 1e-12);
        Assert.False(up[^1].HasPigment);
        Assert.Equal(up.Select(l => l.DepthMm).Reverse(), down.Select(l => l.DepthMm));
        Assert.Equal(up.Select(l => l.VolumeFraction).Reverse(), down.Select(l => l.VolumeFraction));
    }

    [Fact]
    public void In_slow_epoxy_it_moves_the_white_and_the_glow_visibly()
    {
        var settled = Slow.Figures;
        var poured = (Slow with { IsSettled = false }).Figures;
        foreach (
            string figure in (string[])
                ["lit.duv", "lit.green_share_percent", "afterglow.luminance_mcd_m2[10]"]
        )
        {
            double ratio = settled[figure]!.Value / poured[figure]!.Value;
            Assert.True(Math.Abs(ratio - 1) > 0.03, $"{figure}: {ratio}");
        }
        Assert.True(settled["lit.blue_absorbed_by_pigment_percent"] < 90);
    }

    [Fact]
    public void Fine_grains_in_a_fast_resin_hardly_move_anything()
    {
        var fast = Slow with { Resin = "epoxy-clear-fast", Layers = Glow(2.5, 20, grainUm: 10) };
        Assert.InRange(fast.Figures["casting.settled_mm"]!.Value, 0.01, 0.03);
        AssertNear(fast, 0.005);
        // Finer still, nothing falls by 1 % of the depth: the very same figures.
        AssertNear(fast with { Layers = Glow(2.5, 20, grainUm: 5) }, 0);
    }

    [Fact]
    public void Ever_thicker_resin_leaves_ever_more_as_it_was_poured()
    {
        double last = double.PositiveInfinity;
        foreach (double times in (double[])[1, 3, 10, 30, 300])
        {
            var thick = Flat with { Resin = TestRecipe.ThickerEpoxy(times) };
            double change = Math.Abs(Math.Log(thick.At(10) / (thick with { IsSettled = false }).At(10)));
            Assert.True(change < last, $"{times} times as thick: {change}, after {last}");
            last = change;
        }
        Assert.Equal(0, last);
    }

    [Fact]
    public void A_bed_at_the_viewing_face_glows_brighter_under_light_from_above()
    {
        double onTheBoard = Flat.At(10);
        double poured = (Flat with { IsSettled = false }).At(10);
        double atTheFace = (Flat with { Face = "down" }).At(10);
        Assert.True(onTheBoard < 0.97 * poured && atTheFace > 1.03 * poured);
    }

    [Fact]
    public void A_bed_on_the_board_takes_more_of_the_LEDs_blue_and_gives_more_green()
    {
        foreach (
            string figure in (string[])["lit.blue_absorbed_by_pigment_percent", "lit.green_share_percent"]
        )
        {
            double?[] values =
            [
                (Flat with { Face = "down" }).Figures[figure],
                (Flat with { IsSettled = false }).Figures[figure],
                Flat.Figures[figure],
            ];
            Assert.Equal(values.Order(), values);
        }
    }

    [Fact]
    public void A_bed_between_tall_packages_takes_less_of_it()
    {
        var tall = Slow.Figures["lit.blue_absorbed_by_pigment_percent"];
        Assert.True(tall < 0.9 * Flat.Figures["lit.blue_absorbed_by_pigment_percent"]);
        // But not nothing: what comes down beside the packages reaches it.
        var all = new TestRecipe { Steps = TestRecipe.OwnLeds(480) }.Figures;
        Assert.InRange(all["casting.settled_mm"]!.Value, 1.9, 2.5);
        Assert.InRange(all["lit.blue_absorbed_by_pigment_percent"]!.Value, 40, 70);
        Assert.InRange(all["afterglow.capacity_filled_bottom_percent"]!.Value, 30, 60);
    }

    [Theory]
    [InlineData("up")]
    [InlineData("down")]
    public void A_pour_level_with_the_packages_keeps_the_bare_figures_and_is_not_charged_by_them(string face)
    {
        var level = new TestRecipe
        {
            Face = face,
            Layers = TestRecipe.Glow(0.7, 20),
            Steps = TestRecipe.OwnLeds(480),
        };
        Assert.Contains(level.Predicted.Warnings, w => w.Code == "settled");
        foreach (string name in (string[])["cct_k", "duv", "x", "y", "ra", "r9", "flux_lm"])
        {
            Assert.NotNull(level.Figures[$"bare.{name}"]);
            Assert.Equal(level.Figures[$"bare.{name}"], level.Figures[$"lit.{name}"]);
        }
        Assert.Equal(0, level.At(0.5));
        Assert.Equal(0, level.Figures["afterglow.capacity_filled_percent"]);
    }

    [Fact]
    public void Under_ever_thinner_cover_a_bed_between_the_packages_tends_to_that()
    {
        var level = new TestRecipe { Steps = TestRecipe.OwnLeds(1) };
        (double Filled, double Shift) At(double overMm)
        {
            var figures = (level with { Layers = TestRecipe.Glow(0.7 + overMm, 20) }).Figures;
            return (
                figures["afterglow.capacity_filled_percent"]!.Value,
                figures["lit.shift_u_prime_v_prime"]!.Value
            );
        }
        // In proportion to what misses the packages, and that to the depth over them.
        var thin = At(1e-4);
        var thinner = At(1e-5);
        Assert.InRange(thinner.Filled, 0.095 * thin.Filled, 0.105 * thin.Filled);
        Assert.InRange(thinner.Shift, 0.09 * thin.Shift, 0.11 * thin.Shift);
        Assert.InRange(thinner.Shift, 0, 1e-6);
    }

    [Theory]
    [InlineData("up", "warm-white-3000")]
    [InlineData("down", "warm-white-3000")]
    [InlineData("up", "flat-warm-white-3000")]
    public void The_blue_budget_closes(string face, string led)
    {
        var figures = (Slow with { Face = face, Led = led }).Figures;
        string[] parts =
        [
            "absorbed_by_pigment",
            "absorbed_by_resin",
            "absorbed_by_board",
            "taken_back_by_package",
            "escaped",
        ];
        Assert.Equal(100, parts.Sum(p => figures[$"lit.blue_{p}_percent"]!.Value), tolerance: 1e-7);
    }

    [Theory]
    [InlineData(5, 10, 15, "epoxy-clear-slow")]
    [InlineData(2.5, 20, 15, "silicone-clear")]
    [InlineData(8, 40, 20, "epoxy-clear-slow")]
    public void Cells_and_slices_cost_less_than_half_a_percent(
        double depthMm,
        double percent,
        double grainUm,
        string resin
    )
    {
        foreach (string face in (string[])["up", "down"])
        {
            var piece = PieceOf(
                Slow with
                {
                    Face = face,
                    Resin = resin,
                    Layers = Glow(depthMm, percent, grainUm),
                }
            );
            var optics = new OpticsShelf();
            var ladder = TestRecipe.Predictor.LadderOf(piece.Layers[0].Pigment!).Fit!.Ladder!;
            var slices = PieceCasting.PlanOf(piece).Layers[0].Settled()!.FromTheBoardUp(piece.IsFaceUp);
            var one = GelledLayers.Of(piece, optics).First(l => l.HasPigment);
            var grains = optics.GrainsOf(piece.Layers[0].Pigment!, piece.Resin, grainUm, 1.5);
            var fine = slices.Select(s =>
                s.VolumeFraction == 0
                    ? PourLayer.Clear(s.ThicknessMm)
                    : one with
                    {
                        DepthMm = s.ThicknessMm,
                        VolumeFraction = s.VolumeFraction,
                        Grains = grains.Mixed(s.ClassShares),
                    }
            );
            double Luminance(IEnumerable<PourLayer> layers, int fineness)
            {
                var stack = new PourStack(optics.Of(piece.Resin), [.. layers], 0.7);
                var light = PieceLight.Of(piece, PourOptics.Of([stack], withGlow: true, fineness)[0]);
                return PieceGlow.Of(light, _ => ladder).Photopic.LuminanceMcdM2(10);
            }
            double expected = Luminance(fine, 4);
            Assert.Equal(expected, Luminance(GelledLayers.Of(piece, optics), 1), tolerance: 5e-3 * expected);
        }
    }

    [Fact]
    public void What_settles_is_said_plainly()
    {
        Assert.StartsWith(
            "a bed of 0.2 mm settles on the board (face up); grains fall 2.6 mm",
            TextOf(Slow, "settled"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "settles at the viewing face (face down)",
            TextOf(Slow with { Face = "down" }, "settled"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "a bed of 0.2 mm settles on 'layer-1' (face up)",
            TextOf(Slow with { Layers = TestRecipe.Clear(1) + Slow.Layers }, "settled"),
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "settling is left out; grains would fall 2.6 mm",
            TextOf(Slow with { IsSettled = false }, "evenly-spread"),
            StringComparison.Ordinal
        );
        var fine = Slow with { Layers = Glow(5, 10, grainUm: 1) };
        Assert.DoesNotContain(fine.Predicted.Warnings, w => w.Code is "settled" or "evenly-spread");
    }

    private static string TextOf(TestRecipe recipe, string code) =>
        recipe.Predicted.Warnings.Single(w => w.Code == code).Text;

    private static void AssertNear(TestRecipe recipe, double relative)
    {
        var poured = (recipe with { IsSettled = false }).Figures;
        var settled = recipe.Figures;
        foreach (string name in (string[])["lit.duv", "lit.flux_kept_percent", "lit.green_share_percent"])
        {
            Assert.Equal(
                poured[name]!.Value,
                settled[name]!.Value,
                tolerance: relative * poured[name]!.Value
            );
        }
        foreach (double minutes in FigureCatalogue.Minutes)
        {
            double expected = poured["afterglow.luminance_mcd_m2", minutes]!.Value;
            double found = settled["afterglow.luminance_mcd_m2", minutes]!.Value;
            Assert.Equal(expected, found, tolerance: relative * expected);
        }
    }

    private static Piece PieceOf(TestRecipe recipe) => TestRecipe.Predictor.Check(recipe.Document).Piece!;

    private static string Glow(double depthMm, double percent, double grainUm) =>
        TestRecipe.Glow(depthMm, percent)
        + FormattableString.Invariant($"    grain_median_um: {grainUm}\n    grain_gsd: 1.5\n");
}
