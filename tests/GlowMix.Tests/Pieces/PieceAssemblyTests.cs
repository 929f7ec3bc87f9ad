using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;
using GlowMix.Tests.Materials;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Pieces;

public class PieceAssemblyTests
{
    private const string Clear = """
        format: 1
        resin: epoxy-clear-slow
        led:
          material: warm-white-3000
        layers:
          - depth_mm: 2.5

        """;

    private static readonly Shelf Shelf = new();

    [Fact]
    public void What_a_recipe_leaves_open_is_taken_as_usual_and_told()
    {
        var piece = Read(Sample.OneLayer);
        Assert.Equal(
            ("white-mask", 60.0, ChargeStart.Empty, 20.0, 0.3),
            (piece.Board.Name, piece.DriveMa, piece.Start, piece.DarknessTemperatureC, piece.LimitMcdPerM2)
        );
        var step = Assert.Single(piece.Steps);
        Assert.Equal((true, null, 480.0, 20.0), (step.OwnLeds, step.Lamp, step.Minutes, step.TemperatureC));
        Assert.Equal((40.0, 1.5), (piece.Layers[0].GrainMedianUm, piece.Layers[0].GrainGsd));
        foreach (
            string told in (string[])
                [
                    "white board",
                    "LEDs at rated current",
                    "grain 40 µm",
                    "20 °C",
                    "charged 8 h by its own LEDs",
                    "limit 0.3 mcd/m²",
                ]
        )
        {
            Assert.Contains(told, piece.TakenAs);
        }
    }

    [Fact]
    public void Nothing_is_told_of_glow_where_there_is_none() =>
        Assert.DoesNotContain(Read(Clear).TakenAs, t => t.Contains("charged", StringComparison.Ordinal));

    [Fact]
    public void Windows_are_counted_where_number_and_size_are_known_and_5_percent_otherwise()
    {
        var unknown = Read(Clear);
        Assert.False(unknown.HasSize);
        Assert.Equal(0.05, unknown.WindowShare, tolerance: 1e-12);

        var known = Read(WithSize(Clear, count: 50, lengthMm: 200, widthMm: 20));
        Assert.True(known.HasSize);
        Assert.Equal(80, known.AreaPerPackageMm2, tolerance: 1e-12);
        Assert.Equal(Math.PI * 1.15 * 1.15 / 80, known.WindowShare, tolerance: 1e-12);
    }

    [Fact]
    public void Depth_over_the_packages_is_less_by_their_height()
    {
        var piece = Read(Clear);
        Assert.Equal(2.5, piece.DepthMm);
        Assert.Equal(1.8, piece.DepthOverPackagesMm, tolerance: 1e-12);
    }

    [Fact]
    public void Loading_by_mass_becomes_a_share_of_the_volume()
    {
        // 20 g of 3.56 g/cm³ in 80 g of 1.10 g/cm³.
        double volume = 20 / 3.56 / ((20 / 3.56) + (80 / 1.1));
        Assert.Equal(volume, Read(Sample.OneLayer).Layers[0].VolumeFraction, tolerance: 1e-12);
    }

    [Fact]
    public void A_lamp_brings_the_illuminance_it_is_told_to()
    {
        var step = Read(
            Sample.OneLayer
                + "charge:\n  steps:\n    - light: daylight-d65\n      illuminance_lx: 300\n      minutes: 5\n"
        ).Steps[0];
        Assert.Equal(300, Photometry.PhotopicLm(step.LampWPerM2Nm!), tolerance: 1e-9);
        Assert.False(step.OwnLeds);
    }

    [Fact]
    public void A_UV_lamp_brings_the_irradiance_it_is_told_to()
    {
        var step = Read(
            Sample.OneLayer
                + "charge:\n  steps:\n    - light: uv-365\n      irradiance_w_m2: 20\n      minutes: 5\n"
        ).Steps[0];
        Assert.Equal(20, step.LampWPerM2Nm!.IntegralOverNm(), tolerance: 1e-9);
    }

    [Theory]
    [InlineData("epoxy-clear-slow", "epoxy-clear-slw", 2, "resin")]
    [InlineData("warm-white-3000", "warm-white-300", 4, "led")]
    [InlineData("green-aluminate", "green-aluminat", 7, "pigment")]
    public void Unknown_materials_are_refused_where_they_are_named(
        string known,
        string wrong,
        int line,
        string kind
    )
    {
        var problem = Assert.Single(
            Problems(Sample.OneLayer.Replace(known, wrong, StringComparison.Ordinal))
        );
        Assert.Equal(line, problem.Place!.Value.Line);
        Assert.Contains($"no {kind} '{wrong}'", problem.Text, StringComparison.Ordinal);
        Assert.Contains($"'{known}'", problem.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("board:\n  material: white-msk\n", 10, "white-mask")]
    [InlineData(
        "charge:\n  steps:\n    - light: daylight-d56\n      illuminance_lx: 300\n      minutes: 5\n",
        11,
        "daylight-d65"
    )]
    [InlineData(
        "charge:\n  steps:\n    - light: own-leds\n      with: led-400\n      illuminance_lx: 300\n      minutes: 5\n",
        12,
        "led-4000"
    )]
    [InlineData("criteria:\n  - jis9107-ja\n  - jis9107-jx\n", 11, "jis9107-j")]
    public void So_are_those_of_other_sections(string lines, int line, string near)
    {
        var problem = Assert.Single(Problems(Sample.OneLayer + lines));
        Assert.Equal(line, problem.Place!.Value.Line);
        Assert.Contains(near, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void All_problems_are_told_at_once_in_the_order_of_lines()
    {
        var problems = Problems(
            Sample
                .OneLayer.Replace("epoxy-clear-slow", "no-such-resin", StringComparison.Ordinal)
                .Replace("warm-white-3000", "no-such-led", StringComparison.Ordinal)
                .Replace("green-aluminate", "no-such-pigment", StringComparison.Ordinal)
        );
        Assert.Equal([2, 4, 7], problems.Select(p => p.Place!.Value.Line));
    }

    [Fact]
    public void An_LED_driven_above_its_most_is_refused()
    {
        var problem = Assert.Single(
            Problems(
                Clear.Replace(
                    "warm-white-3000\n",
                    "warm-white-3000\n  drive_ma: 151\n",
                    StringComparison.Ordinal
                )
            )
        );
        Assert.Equal(
            "a.yaml:5:13: drive_ma is 151; allowed for warm-white-3000: above 0 to 150 mA",
            problem.ToString()
        );
    }

    [Fact]
    public void Lux_of_a_UV_lamp_says_nothing_and_is_refused()
    {
        var problem = Assert.Single(
            Problems(
                Sample.OneLayer
                    + "charge:\n  steps:\n    - light: uv-365\n      illuminance_lx: 50\n      minutes: 5\n"
            )
        );
        Assert.Equal(12, problem.Place!.Value.Line);
        Assert.Contains("write irradiance_w_m2", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Packages_that_do_not_fit_on_the_board_are_refused()
    {
        // 100 packages of 3.5 × 2.8 mm cover 980 mm².
        Assert.NotNull(PieceOf(WithSize(Clear, 100, 100, 9.81)).Piece);
        var problem = Assert.Single(Problems(WithSize(Clear, 100, 100, 9.7)));
        Assert.Contains("do not fit on 970 mm²", problem.Text, StringComparison.Ordinal);
        Assert.Equal(5, problem.Place!.Value.Line);
    }

    [Fact]
    public void A_recipe_with_errors_gives_no_piece_and_its_own_problems()
    {
        var reading = PieceOf(Sample.OneLayer.Replace("2.5", "-2.5", StringComparison.Ordinal));
        Assert.Null(reading.Piece);
        Assert.Single(reading.Problems);
    }

    [Fact]
    public void A_broken_material_file_beside_the_recipe_is_told_once_and_in_its_place()
    {
        var files = new InMemoryMaterials(
            (
                "materials/pigments/mine.yaml",
                InMemoryMaterials
                    .Shipped("data/pigments/green-aluminate.yaml")
                    .Replace("value: 3.56", "value: heavy", StringComparison.Ordinal)
            )
        );
        var text =
            Sample.OneLayer.Replace("green-aluminate", "mine", StringComparison.Ordinal)
            + "  - depth_mm: 1\n    pigment: mine\n    loading_percent: 5\n";
        var reading = PieceAssembly.Of(Sample.Read(text), new Shelf(files), files);
        Assert.Null(reading.Piece);
        var problem = Assert.Single(reading.Problems);
        Assert.Equal("materials/pigments/mine.yaml", problem.File);
        Assert.NotNull(problem.Place);
    }

    [Fact]
    public void The_LED_of_a_label_is_worked_out_once_and_anew_for_another_label()
    {
        string label = Sample.OneLayer.Replace(
            "  material: warm-white-3000",
            "  cct_k: 3456\n  ra: 80\n  flux_lm: 20\n  at_ma: 60",
            StringComparison.Ordinal
        );
        var led = PieceOf(label).Piece!.Led;
        Assert.Same(led, PieceOf(label.Replace("2.5", "2", StringComparison.Ordinal)).Piece!.Led);
        var other = PieceOf(label.Replace("3456", "3457", StringComparison.Ordinal)).Piece!.Led;
        Assert.NotEqual(led.Die.Share.Value, other.Die.Share.Value);
    }

    [Fact]
    public void A_path_leads_nowhere_without_files()
    {
        var reading = PieceOf(
            Clear.Replace("material: warm-white-3000", "spectrum: led.csv", StringComparison.Ordinal)
        );
        Assert.Null(reading.Piece);
        Assert.Contains(reading.Problems, p => p.Severity == Severity.Error && p.Place!.Value.Line == 4);
    }

    private static string WithSize(string recipe, int count, double lengthMm, double widthMm) =>
        recipe.Replace("warm-white-3000\n", $"warm-white-3000\n  count: {count}\n", StringComparison.Ordinal)
        + FormattableString.Invariant($"pour:\n  length_mm: {lengthMm}\n  width_mm: {widthMm}\n");

    private static PieceReading PieceOf(string text) => PieceAssembly.Of(Sample.Read(text), Shelf);

    private static Piece Read(string text)
    {
        var reading = PieceOf(text);
        Assert.DoesNotContain(reading.Problems, p => p.Severity == Severity.Error);
        return reading.Piece!;
    }

    private static IReadOnlyList<Problem> Problems(string text)
    {
        var reading = PieceOf(text);
        Assert.Null(reading.Piece);
        return [.. reading.Problems.Where(p => p.Severity == Severity.Error)];
    }
}
