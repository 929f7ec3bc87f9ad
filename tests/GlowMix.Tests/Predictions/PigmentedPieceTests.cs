using GlowMix.Colour;
using GlowMix.Predictions;

namespace GlowMix.Tests.Predictions;

/// <summary>What pigment does to the lit piece.</summary>
public class PigmentedPieceTests
{
    private static readonly FigureValues[] ByLoading =
    [
        .. ((double[])[0, 2, 5, 10, 20, 40]).Select(percent =>
            new TestRecipe { Layers = TestRecipe.Glow(2.7, percent) }.Figures
        ),
    ];

    [Theory]
    [InlineData("lit.blue_absorbed_by_pigment_percent")]
    [InlineData("lit.green_share_percent")]
    [InlineData("lit.duv")]
    [InlineData("lit.v_prime")]
    public void More_pigment_brings_more(string figure)
    {
        double[] values = [.. ByLoading.Select(f => f[figure]!.Value)];
        for (int i = 1; i < values.Length; i++)
        {
            Assert.True(values[i] > values[i - 1], $"{figure}: {string.Join(", ", values)}");
        }
    }

    [Fact]
    public void More_pigment_leaves_less_blue() =>
        Assert.Equal(ByLoading.OrderByDescending(f => f["lit.blue_escaped_percent"]), ByLoading);

    [Fact]
    public void Loading_0_is_clear_resin_with_no_glow()
    {
        var none = ByLoading[0];
        var clear = new TestRecipe { Layers = TestRecipe.Clear(2.7) }.Figures;
        Assert.Equal(clear["lit.cct_k"], none["lit.cct_k"]);
        Assert.Equal(0, none["lit.blue_absorbed_by_pigment_percent"]);
        Assert.Null(none["afterglow.luminance_mcd_m2", 10]);
        Assert.Null(none["afterglow.minutes_to_limit"]);
    }

    [Fact]
    public void The_blue_budget_closes()
    {
        string[] parts =
        [
            "absorbed_by_pigment",
            "absorbed_by_resin",
            "absorbed_by_board",
            "taken_back_by_package",
            "escaped",
        ];
        Assert.All(
            ByLoading,
            f => Assert.Equal(100, parts.Sum(p => f[$"lit.blue_{p}_percent"]!.Value), tolerance: 1e-7)
        );
    }

    [Fact]
    public void Green_lumens_are_a_share_of_all_lumens()
    {
        var spectra = new TestRecipe { Layers = TestRecipe.Glow(2.7, 20) }
            .Predicted
            .Spectra;
        double share =
            Photometry.PhotopicLm(spectra.PigmentWPerNm) / Photometry.PhotopicLm(spectra.LitWPerNm);
        Assert.Equal(ByLoading[4]["lit.green_share_percent"]!.Value, 100 * share, tolerance: 1e-9);
    }

    [Fact]
    public void A_black_board_leaves_less_glow_than_a_white_one_whatever_charges_it()
    {
        foreach (
            string steps in (string[])
                ["", TestRecipe.Lamp("daylight-d65", 300, 10), TestRecipe.Lamp("led-4000", 50, 480)]
        )
        {
            var white = new TestRecipe { Steps = steps };
            var black = white with { Board = "black-mask" };
            Assert.True(black.At(10) < white.At(10));
            Assert.True(black.At(240) < white.At(240));
        }
    }

    [Fact]
    public void A_layer_poured_in_two_is_the_same_piece()
    {
        string steps = TestRecipe.OwnLeds(480) + TestRecipe.Lamp("daylight-d65", 300, 5);
        // Evenly spread: poured in two, each part settles for itself.
        var whole = new TestRecipe
        {
            Layers = TestRecipe.Glow(2.5, 20),
            Steps = steps,
            IsSettled = false,
        }.Figures;
        var inTwo = new TestRecipe
        {
            Layers = TestRecipe.Glow(1.1, 20) + TestRecipe.Glow(1.4, 20),
            Steps = steps,
            IsSettled = false,
        }.Figures;
        Assert.All(
            // The lowest and topmost cells are thinner in thinner layers, and what fills them is told of the cell.
            FigureCatalogue.All.Where(f =>
                !f.Name.Contains("capacity_filled_", StringComparison.Ordinal)
                && !f.Name.StartsWith("casting.", StringComparison.Ordinal)
            ),
            f =>
            {
                Assert.Equal(whole[f] is null, inTwo[f] is null);
                if (whole[f] is double expected)
                {
                    Assert.Equal(expected, inTwo[f]!.Value, tolerance: 1e-9 + (1e-3 * Math.Abs(expected)));
                }
            }
        );
    }
}
