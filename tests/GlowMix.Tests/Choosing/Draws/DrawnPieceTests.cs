using GlowMix.Afterglow;
using GlowMix.Choosing.Draws;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Choosing.Draws;

/// <summary>What a draw interpolates, held against the piece worked out from its numbers without any table.</summary>
public sealed class DrawnPieceTests
{
    private const int ManySizes = 160;
    private static readonly Shelf Shelf = new();
    private static readonly TestRecipe Recipe = new()
    {
        Layers = """
              - name: glow
                depth_mm: 2.5
                depth_tolerance_mm: 0.2
                pigment: green-aluminate
                grain_median_um: 12
                grain_tolerance_factor: 1.15
                loading_percent: 20
                loading_tolerance_points: 1

            """,
        Steps = """
                - light: fl11
                  illuminance_lx: 300
                  illuminance_tolerance_percent: 10
                  minutes: 30

            """,
    };

    [Fact]
    public void Interpolated_draw_is_the_piece_worked_out_by_itself_within_a_fifth_of_a_percent()
    {
        // Averages over 40 sizes ring by as much themselves: more sizes, on both sides, show what interpolation does. Evenly
        // spread grains shade most, and what little blue they leave follows the tables most.
        (string Figure, double MostPercent)[] figures =
        [
            ("lit.cct_k", 0.2),
            ("lit.u_prime", 0.2),
            ("lit.v_prime", 0.2),
            ("lit.flux_kept_percent", 0.2),
            ("lit.green_share_percent", 0.2),
            ("lit.blue_absorbed_by_pigment_percent", 0.2),
            ("lit.blue_escaped_percent", 0.2),
            ("afterglow.luminance_mcd_m2[2]", 0.2),
            ("afterglow.luminance_mcd_m2[10]", 0.2),
            ("afterglow.luminance_mcd_m2[480]", 0.2),
            ("afterglow.capacity_filled_percent", 0.2),
        ];
        var optics = new OpticsShelf(readsDerived: false, ManySizes);
        var piece = PieceOf(Recipe.Document) with { IsSettled = false };
        var bench = new DrawBench(piece, new DrawShelf(optics, new PigmentSheets(Shelf, optics)));
        var points = SobolPoints.Scrambled(bench.Numbers.Length, seed: 3);
        var squares = new double[figures.Length];
        int count = 0;
        for (int i = 0; i < 6; i++)
        {
            double[] point = points.Point(i);
            if (bench.Run(point) is not { } draw)
            {
                continue;
            }
            var byItself = ByItself(bench.DrawnOf(point));
            for (int f = 0; f < figures.Length; f++)
            {
                double percent =
                    100 * ((draw.Figures[figures[f].Figure] / byItself[figures[f].Figure]) - 1)!.Value;
                squares[f] += percent * percent;
            }
            count++;
        }
        Assert.InRange(count, 4, 6);
        Assert.All(
            figures.Zip(squares),
            f =>
                Assert.True(
                    Math.Sqrt(f.Second / count) <= f.First.MostPercent,
                    $"{f.First.Figure}: {Math.Sqrt(f.Second / count)} %"
                )
        );
    }

    [Fact]
    public void Draw_with_every_number_as_it_stands_is_the_likely_run()
    {
        var optics = new OpticsShelf();
        var bench = new DrawBench(
            PieceOf(Recipe.Document),
            new DrawShelf(optics, new PigmentSheets(Shelf, optics))
        );
        var draw = bench.Run([.. bench.Numbers.Select(n => ShareOfLikely(n.Spread))])!;
        var likely = new Predictor(Shelf).Predict(Recipe.Document).Prediction!.Figures;
        // The resin's index is drawn in steps of 1e-4.
        foreach (
            string figure in new[]
            {
                "lit.cct_k",
                "lit.u_prime",
                "lit.flux_lm",
                "afterglow.luminance_mcd_m2[10]",
                "afterglow.minutes_to_0_3_mcd_m2",
            }
        )
        {
            double expected = likely[figure]!.Value;
            Assert.Equal(expected, draw.Figures[figure]!.Value, tolerance: 2e-4 * expected);
        }
    }

    private static double ShareOfLikely(Spread spread)
    {
        double low = 1e-12;
        double high = 1 - 1e-12;
        while (high - low > 1e-14)
        {
            double middle = (low + high) / 2;
            (low, high) = spread.At(middle) < spread.Likely ? (middle, high) : (low, middle);
        }
        return (low + high) / 2;
    }

    private static Piece PieceOf(RecipeDocument document) => PieceAssembly.Of(document, Shelf).Piece!;

    private static FigureValues ByItself(DrawnPiece drawn)
    {
        var optics = new OpticsShelf(readsDerived: false, ManySizes);
        var sheets = new PigmentSheets(Shelf, optics);
        var (draft, pigment) = Assert.Single(drawn.Pigments);
        var ladder = LadderFit
            .To(
                sheets.Solve(sheets.SampleOf(pigment).Sample!, absorptionFactor: 1),
                LadderShelf.ConstantsOf(pigment),
                draft.LadderSmoothing,
                draft.WeightExponent
            )
            .Ladder!;
        var light = PieceLight.Of(drawn.Piece, optics);
        return Run.FiguresOf(light, PieceGlow.Of(light, _ => ladder)).Figures;
    }
}
