using GlowMix.Colour;
using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Optics.Pour;

public class GlowEscapeTests
{
    private static readonly Spectrum White = Spectrum.FromNm(nm => nm < 410 ? 0.4 : 0.87);

    private static readonly PourStack TwoGlows = SamplePours.Stack(
        0,
        SamplePours.Green(1.2),
        PourLayer.Clear(0.4),
        SamplePours.Blue(0.8)
    );

    private static readonly PourOptics Two = PourOptics.Of(TwoGlows);
    private static readonly PourOptics One = PourOptics.Of(SamplePours.Stack(0, SamplePours.Green(2)));

    [Fact]
    public void Over_a_black_floor_each_photon_gets_out_or_is_absorbed() => AssertNoPhotonIsLost(One);

    [Fact]
    public void Nor_is_one_lost_between_two_layers() =>
        AssertNoPhotonIsLost(
            PourOptics.Of(SamplePours.Stack(0, SamplePours.Green(1.2), SamplePours.Blue(0.8)))
        );

    // Escape is by reciprocity, as is what goes into higher layers; the rest by fluence from the cell itself: two ways that must
    // meet.
    private static void AssertNoPhotonIsLost(PourOptics pour)
    {
        var glow = GlowEscape.Of(pour, Spectrum.Zero);
        int groups = pour.Grid.GroupCount;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            if (pour.GroupFluence[i] is not { } fluence)
            {
                continue;
            }
            double AbsorptionPerMm(int group)
            {
                int layer = pour.Grid.LayerOfGroup[group];
                return pour.PigmentAbsorptionPerMm(layer, i)
                    + ((1 - pour.Stack.Layers[layer].VolumeFraction) * pour.Stack.Resin.AbsorptionPerMm[i]);
            }
            bool isAlmostClear = Enumerable.Range(0, groups).Any(g => AbsorptionPerMm(g) <= 5e-3);
            for (int from = 0; from < groups; from++)
            {
                double sum = 0;
                for (int to = 0; to < groups; to++)
                {
                    sum += fluence[(from * groups) + to] * AbsorptionPerMm(to) * WidthMm(pour, to);
                }
                foreach (int c in CellsOf(pour, from))
                {
                    double share = pour.Cells[c].WidthMm / WidthMm(pour, from);
                    sum += share * (glow.EscapeShare(c, i) + (pour.WholeFloor.FluenceAt(i)[c] / 4));
                }
                // In an almost clear layer a cell's own slow mode is taken as a straight line.
                Assert.Equal(1, sum, tolerance: isAlmostClear ? 1e-6 : 1e-9);
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.87)]
    public void Glow_taken_back_comes_again_as_in_generation_after_generation(double reflectance)
    {
        var floor = reflectance * White;
        double[] first = [.. Two.Cells.Select((c, i) => (1 + (i % 5)) * c.WidthMm * 1e15)];
        double[] emitted = Generations(Two, floor, first);
        var glow = GlowEscape.Of(Two, floor);
        var expected = Outside(Two, glow, emitted);
        var found = glow.EscapedWPerNm(first);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(expected[i], found[i], tolerance: 1e-10 * expected.Samples.ToArray().Max());
        }
        // It matters: without it a good part of the glow would be missing.
        double once = Outside(Two, glow, first).IntegralOverNm();
        Assert.True(found.IntegralOverNm() > 1.02 * once);
    }

    [Fact]
    public void Out_of_layers_that_no_light_leaves_comes_nothing_and_never_less()
    {
        var pour = PourOptics.Of(
            SamplePours.Stack(
                0,
                SamplePours.Green(150, 0.6),
                SamplePours.Blue(8, 0.03),
                SamplePours.Green(150, 0.6),
                SamplePours.Blue(150, 0.6)
            )
        );
        var glow = GlowEscape.Of(pour, White);
        Assert.All(glow.PerPhoton(Photometry.LmPerW), lm => Assert.True(lm >= 0));
        Assert.All(
            glow.EscapedWPerNm([.. pour.Cells.Select(c => c.WidthMm)]).Samples.ToArray(),
            w => Assert.True(w >= 0)
        );
    }

    [Fact]
    public void Without_yield_nothing_comes_again()
    {
        var pour = PourOptics.Of(SamplePours.Stack(0, SamplePours.Green(1, yield: 0)));
        var glow = GlowEscape.Of(pour, White);
        double[] first = [.. pour.Cells.Select(c => c.WidthMm)];
        var expected = Outside(pour, glow, first);
        var found = glow.EscapedWPerNm(first);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(expected[i], found[i], tolerance: 1e-13 * expected.Samples.ToArray().Max());
        }
    }

    [Fact]
    public void Photons_first_emitted_are_all_accounted_for()
    {
        // Exact at one wavelength; over a band up to the step of 10 nm at which re-absorption is carried.
        double[] first = [.. One.Cells.Select(c => c.WidthMm * 1e15)];
        double[] emitted = Generations(One, White, first);
        double escaped = Photons(GlowEscape.Of(One, White).EscapedWPerNm(first));
        var layer = One.Stack.Layers[0];
        double lost = 0;
        foreach (var (i, share) in Carried(One, 0))
        {
            double resin = (1 - layer.VolumeFraction) * One.Stack.Resin.AbsorptionPerMm[i];
            double pigment = One.PigmentAbsorptionPerMm(0, i);
            double[] groups = Enumerable
                .Range(0, One.Grid.GroupCount)
                .Select(g => CellsOf(One, g).Sum(c => emitted[c]))
                .ToArray();
            double[] fluence = GroupFluence(One, White, i, groups);
            for (int g = 0; g < groups.Length; g++)
            {
                lost += share * fluence[g] * WidthMm(One, g) * (resin + ((1 - layer.Yield) * pigment));
            }
            // On the floor lands ¼ of the floor source's fluence, and what comes back from above lands again.
            double landing = emitted.Select((e, c) => e * One.WholeFloor.FluenceAt(i)[c] / 4).Sum();
            lost += share * (1 - White[i]) * landing / (1 - (White[i] * One.WholeFloor.Floor[i]));
        }
        Assert.Equal(first.Sum(), escaped + lost, tolerance: 1e-3 * first.Sum());
    }

    [Fact]
    public void With_nothing_to_lose_it_in_all_glow_gets_out()
    {
        var resin = SamplePours.Resin.Lossless;
        var pour = PourOptics.Of(new PourStack(resin, [SamplePours.Green(2, yield: 1)], PackageHeightMm: 0));
        var glow = GlowEscape.Of(pour, Spectrum.Constant(1));
        double[] first = [.. pour.Cells.Select(c => c.WidthMm * 1e15)];
        Assert.Equal(first.Sum(), Photons(glow.EscapedWPerNm(first)), tolerance: 1e-3 * first.Sum());
    }

    [Fact]
    public void Escape_over_a_white_floor_without_losses_is_certain()
    {
        var resin = SamplePours.Resin.Lossless;
        var clearGrains = SamplePours.Green(2) with
        {
            Grains = SamplePours.Green(2).Grains!.WithAbsorptionScaled(0),
        };
        var pour = PourOptics.Of(new PourStack(resin, [clearGrains], PackageHeightMm: 0));
        var glow = GlowEscape.Of(pour, Spectrum.Constant(1));
        for (int c = 0; c < pour.Cells.Count; c++)
        {
            Assert.Equal(1, glow.EscapeShare(c, 36), tolerance: 1e-9);
        }
    }

    [Fact]
    public void The_weight_of_a_photon_and_the_light_outside_say_the_same()
    {
        var glow = GlowEscape.Of(Two, White);
        double[] first = [.. Two.Cells.Select((c, i) => (1 + (i % 7)) * 1e14)];
        double[] perPhoton = glow.PerPhoton(Photometry.LmPerW);
        double lumens = Photometry.PhotopicLm(glow.EscapedWPerNm(first));
        Assert.Equal(lumens, first.Zip(perPhoton, (n, lm) => n * lm).Sum(), tolerance: 1e-9 * lumens);
    }

    [Fact]
    public void Finer_cells_change_the_glow_by_less_than_half_a_percent()
    {
        var light = SamplePours.Band(450, 20);
        double Lumens(PourOptics pour)
        {
            double[] rates = PigmentExcitation.FromLeds(pour, light);
            double[] first =
            [
                .. rates.Select(
                    (rate, c) =>
                        rate
                        * pour.Cells[c].WidthMm
                        * pour.Stack.Layers[pour.Cells[c].Layer].VolumeFraction
                        * pour.Stack.Layers[pour.Cells[c].Layer].Yield
                ),
            ];
            return Photometry.PhotopicLm(GlowEscape.Of(pour, White).EscapedWPerNm(first));
        }
        double fine = Lumens(PourOptics.Of([TwoGlows], withGlow: true, fineness: 4)[0]);
        Assert.Equal(fine, Lumens(Two), tolerance: 1e-3 * fine);
    }

    [Fact]
    public void A_black_floor_lets_less_out()
    {
        double[] first = [.. Two.Cells.Select(c => c.WidthMm)];
        double black = GlowEscape.Of(Two, Spectrum.Constant(0.05)).EscapedWPerNm(first).IntegralOverNm();
        double white = GlowEscape.Of(Two, White).EscapedWPerNm(first).IntegralOverNm();
        Assert.InRange(black / white, 0.3, 0.8);
    }

    [Fact]
    public void Glow_of_clear_resin_is_refused() =>
        Assert.Throws<ArgumentException>(() =>
            GlowEscape.Of(PourOptics.Of(SamplePours.Stack(0, PourLayer.Clear(1))), White)
        );

    [Fact]
    public void Rates_of_another_number_of_cells_are_refused() =>
        Assert.Throws<ArgumentException>(() => GlowEscape.Of(One, White).EscapedWPerNm([1, 2, 3]));

    /// <summary>All photons ever emitted in each cell, generation after generation until under a 1e-15th is left.</summary>
    private static double[] Generations(PourOptics pour, Spectrum floor, double[] first)
    {
        var total = (double[])first.Clone();
        double[] now =
        [
            .. Enumerable.Range(0, pour.Grid.GroupCount).Select(g => CellsOf(pour, g).Sum(c => first[c])),
        ];
        while (now.Sum() > 1e-15 * total.Sum())
        {
            var next = new double[now.Length];
            for (int layer = 0; layer < pour.Stack.Layers.Count; layer++)
            {
                if (!pour.Stack.Layers[layer].HasPigment)
                {
                    continue;
                }
                double[] ofLayer = [.. now.Select((n, g) => LayerOf(pour, g) == layer ? n : 0)];
                foreach (var (i, share) in Carried(pour, layer))
                {
                    double[] fluence = GroupFluence(pour, floor, i, ofLayer);
                    for (int g = 0; g < next.Length; g++)
                    {
                        int there = LayerOf(pour, g);
                        next[g] +=
                            share
                            * fluence[g]
                            * WidthMm(pour, g)
                            * pour.PigmentAbsorptionPerMm(there, i)
                            * pour.Stack.Layers[there].Yield;
                    }
                }
            }
            for (int c = 0; c < total.Length; c++)
            {
                int g = pour.Grid.GroupOfCell[c];
                total[c] += next[g] * pour.Cells[c].WidthMm / WidthMm(pour, g);
            }
            now = next;
        }
        return total;
    }

    /// <summary>Mean fluence in each group from photons that groups send out, what the floor sends back included.</summary>
    private static double[] GroupFluence(PourOptics pour, Spectrum floor, int wavelength, double[] emitted)
    {
        int groups = emitted.Length;
        var fromFloor = new double[groups];
        for (int g = 0; g < groups; g++)
        {
            foreach (int c in CellsOf(pour, g))
            {
                fromFloor[g] +=
                    pour.WholeFloor.FluenceAt(wavelength)[c] * pour.Cells[c].WidthMm / WidthMm(pour, g);
            }
        }
        double landing = emitted.Select((e, g) => e * fromFloor[g] / 4).Sum();
        double up = 0;
        for (int pass = 0; pass < 300; pass++)
        {
            up += floor[wavelength] * landing;
            landing *= floor[wavelength] * pour.WholeFloor.Floor[wavelength];
        }
        var black = pour.GroupFluence[wavelength]!;
        return
        [
            .. Enumerable
                .Range(0, groups)
                .Select(to =>
                    (up * fromFloor[to]) + emitted.Select((e, from) => e * black[(from * groups) + to]).Sum()
                ),
        ];
    }

    /// <summary>The wavelengths that carry re-absorption, with the share of a layer's photons that each stands for.</summary>
    private static IEnumerable<(int Wavelength, double Share)> Carried(PourOptics pour, int layer)
    {
        int[] all =
        [
            .. Enumerable.Range(0, WavelengthGrid.Count).Where(i => pour.GroupFluence[i] is not null),
        ];
        double Weight(int i) => pour.Stack.Layers[layer].EmissionPerNm![i] * WavelengthGrid.NmAt(i);
        double sum = all.Sum(Weight);
        return all.Select(i => (i, Weight(i) / sum));
    }

    /// <summary>Light outside from photons emitted in each cell, none of it taken back.</summary>
    private static Spectrum Outside(PourOptics pour, GlowEscape glow, double[] emitted) =>
        Spectrum.FromIndex(i =>
            emitted
                .Select(
                    (photons, c) =>
                    {
                        var emission = pour.Stack.Layers[pour.Cells[c].Layer].EmissionPerNm!;
                        return photons * emission[i] / Photons(emission) * glow.EscapeShare(c, i);
                    }
                )
                .Sum()
        );

    private static double Photons(Spectrum wPerNm) =>
        Enumerable
            .Range(0, WavelengthGrid.Count)
            .Sum(i => wPerNm[i] * WavelengthGrid.StepNm * Photon.PerJoule(WavelengthGrid.NmAt(i)));

    private static IEnumerable<int> CellsOf(PourOptics pour, int group) =>
        Enumerable.Range(0, pour.Cells.Count).Where(c => pour.Grid.GroupOfCell[c] == group);

    private static int LayerOf(PourOptics pour, int group) => pour.Grid.LayerOfGroup[group];

    private static double WidthMm(PourOptics pour, int group) => pour.Grid.GroupWidthMm[group];
}
