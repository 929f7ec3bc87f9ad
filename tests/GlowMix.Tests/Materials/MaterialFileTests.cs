using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

/// <summary>Files with slips, each a shipped file with one thing changed.</summary>
public class MaterialFileTests
{
    private const string Path = "materials/x/own.yaml";

    [Fact]
    public void A_number_without_a_source_is_refused_at_its_place()
    {
        var problem = Assert.Single(
            Resin(
                "  value: 1.1\n  low: 1.08\n  high: 1.18\n  source: ",
                "  value: 1.1\n  # source: "
            ).Problems
        );
        Assert.Equal(MaterialProblemTexts.NoSource("density_mix_g_cm3"), problem.Text);
        Assert.Equal(LineOf("resins/epoxy-clear-slow", "density_mix_g_cm3:") + 1, problem.Place!.Value.Line);
    }

    [Fact]
    public void A_source_that_names_nothing_is_refused() =>
        Assert.Equal(
            [MaterialProblemTexts.SourceNamesNothing("abbe_number", "todo")],
            Texts(
                Resin(
                    "abbe_number:\n  value: 40\n  low: 34\n  high: 45\n  source: assumed",
                    "abbe_number:\n  value: 40\n  source: todo"
                )
            )
        );

    [Fact]
    public void A_bare_number_is_told_how_to_be_written()
    {
        string text = InMemoryMaterials.Shipped("data/boards/black-mask.yaml");
        string bare = text[..text.IndexOf("reflectance:", StringComparison.Ordinal)] + "reflectance: 0.05\n";
        Assert.Equal([MaterialProblemTexts.ValueWithoutSource("reflectance", "0.05")], Texts(Board(bare)));
    }

    [Fact]
    public void All_problems_of_a_file_are_told_at_once_in_line_order()
    {
        string text = InMemoryMaterials
            .Shipped("data/pigments/green-aluminate.yaml")
            .Replace("value: 3.56", "value: 356", StringComparison.Ordinal)
            .Replace("emission_fwhm_nm:", "emission_fwmh_nm:", StringComparison.Ordinal)
            .Replace("    400: 13.5", "    400: heaps", StringComparison.Ordinal)
            .Replace(
                "grain_gsd:\n  value: 1.5\n  source: assumed",
                "grain_gsd:\n  value: 1.5",
                StringComparison.Ordinal
            );
        var problems = Pigment(text).Problems;
        Assert.Equal(5, problems.Length);
        Assert.Equal(
            problems.Select(p => p.Place ?? default).Order(),
            problems.Select(p => p.Place ?? default)
        );
        Assert.Equal(ProblemTexts.Missing("emission_fwhm_nm", ""), problems[0].Text);
        Assert.Equal(
            ProblemTexts.OutOfRange("density_g_cm3", 356, NumberRange.Between(0.5, 10)),
            problems[1].Text
        );
        Assert.StartsWith(
            "absorption_per_mm at_nm 400 is 'heaps'",
            problems[2].Text,
            StringComparison.Ordinal
        );
        Assert.StartsWith("unknown key 'emission_fwmh_nm'", problems[3].Text, StringComparison.Ordinal);
        Assert.Equal(MaterialProblemTexts.NoSource("grain_gsd"), problems[4].Text);
    }

    [Theory]
    [InlineData("    420: 0.008", "    360: 0.008", "absorption_per_mm at_nm: 360 does not ascend")]
    [InlineData("    420: 0.008", "    blue: 0.008", "absorption_per_mm at_nm: 'blue' is no number")]
    [InlineData("    420: 0.008", "    42: 0.008", "absorption_per_mm at_nm: 42 is out of range")]
    [InlineData("    420: 0.008", "    420: 0", "absorption_per_mm at_nm 420 is 0; allowed: above 0")]
    [InlineData("  factor: 3", "  factor: 1", "factor is 1; allowed: above 1")]
    [InlineData(
        "  factor: 3",
        "  factor: 3\n  tolerance_percent: 5",
        "absorption_per_mm states its doubt twice"
    )]
    [InlineData("  low: 1.5\n", "  low: 1.55\n", "low and high of refractive_index_d belong together")]
    [InlineData("  by: mass", "  by: weight", "by is 'weight'; allowed: mass, volume")]
    [InlineData("  part_b: 1\n", "  part_b: 0\n", "part_b is 0; allowed: above 0")]
    [InlineData("    mass_g: 150\n", "", "'mass_g' is missing in pot_life.1")]
    [InlineData("kind: resin", "kind: pigment", "kind is 'pigment'; needed here: resin")]
    [InlineData("material_format: 1", "material_format: 2", "material_format is 2")]
    [InlineData("material_format: 1\n", "", MaterialProblemTexts.FirstKey)]
    [InlineData("  value: 1.1\n", "  value: 1.06\n", "low and high of density_mix_g_cm3")]
    [InlineData("title: ", "like: moonshine\ntitle: ", "like is 'moonshine'; allowed: a shipped resin")]
    public void A_slip_in_a_resin_is_told(string find, string replace, string begin) =>
        Assert.StartsWith(begin, Assert.Single(Texts(Resin(find, replace))), StringComparison.Ordinal);

    [Fact]
    public void Parts_and_mix_must_agree_in_density() =>
        Assert.StartsWith(
            "density_mix_g_cm3 is 1.1, but the parts at their ratio give 1.329",
            Assert.Single(
                Texts(Resin("density_part_a_g_cm3:\n  value: 1.14", "density_part_a_g_cm3:\n  value: 1.5"))
            ),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(
        "die_share:\n  value: 0.086351",
        "die_share:\n  value: 0.186351",
        "die_share, green_share and red_share add up to 1.1"
    )]
    [InlineData("max_ma:\n  value: 150", "max_ma:\n  value: 50", "at_ma is 60 and max_ma 50")]
    [InlineData("    into_die: 0.25", "    into_die: 0.75", "return_matrix.from_die adds up to 1.2")]
    [InlineData("red_peak_nm:\n  value: 611\n", "red_peak_nm:\n  value: 700.5\n", "red_peak_nm is 700.5")]
    public void A_slip_in_an_LED_is_told(string find, string replace, string begin)
    {
        string text = InMemoryMaterials.Shipped("data/leds/warm-white-3000.yaml");
        Assert.Contains(find, text, StringComparison.Ordinal);
        var shelf = Own("leds", text.Replace(find, replace, StringComparison.Ordinal));
        Assert.StartsWith(begin, Assert.Single(Texts(shelf.Led("own"))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_that_does_not_reach_the_models_ends_is_held_with_a_warning()
    {
        var loaded = Resin("    340: 0.3\n    365: 0.08\n    380: 0.04\n", "");
        Assert.NotNull(loaded.Material);
        var warning = Assert.Single(loaded.Problems);
        Assert.Equal(Severity.Warning, warning.Severity);
        Assert.Equal(MaterialProblemTexts.TableHeld("absorption_per_mm", 400, 780), warning.Text);
        Assert.Equal(0.020, loaded.Material.AbsorptionPerMm.Value[0]);
    }

    [Fact]
    public void A_pigment_that_is_like_a_shipped_one_needs_only_what_differs()
    {
        var own = Pigment(
            """
            material_format: 1
            kind: pigment
            title: From the bag
            like: green-aluminate
            grain_median_um:
              value: 65
              source: label
            """
        ).Material!;
        var like = new Shelf().Pigment("green-aluminate").Material!;
        Assert.Equal(65, own.GrainMedianUm.Value);
        Assert.Equal(SourceMark.Users, own.GrainMedianUm.Mark);
        Assert.Equal(like.AbsorptionPerMm.Value.Samples, own.AbsorptionPerMm.Value.Samples);
        Assert.Equal(like.Sheet.Points.Value, own.Sheet.Points.Value);
        Assert.Equal(like.Cautions, own.Cautions);
        Assert.Equal(like.Facts.Select(f => f.Key), own.Facts.Select(f => f.Key));
    }

    [Fact]
    public void A_resin_that_is_like_a_shipped_one_may_have_its_own_index()
    {
        var shelf = Own(
            "resins",
            """
            material_format: 1
            kind: resin
            title: Dense
            like: silicone-clear
            refractive_index:
              formula: cauchy
              a: 1.5
              b_um2: 0.005
              c_um4: 0
              source: label
            """
        );
        var own = shelf.Resin("own").Material!;
        Assert.Equal(1.5 + (0.005 / 0.25), own.RefractiveIndex.Value[32], tolerance: 1e-12);
        Assert.Equal(SourceMark.FromMemory, own.Viscosities[0].Mark);
    }

    [Fact]
    public void An_index_that_no_clear_resin_has_is_refused() =>
        Assert.StartsWith(
            "refractive_index at_nm 500 is 7; allowed: 1 to 3",
            Assert.Single(
                Texts(
                    Own(
                            "resins",
                            """
                            material_format: 1
                            kind: resin
                            title: Impossible
                            like: silicone-clear
                            refractive_index:
                              at_nm:
                                500: 7
                              source: label
                            """
                        )
                        .Resin("own")
                )
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_lamp_may_be_a_table_of_the_users()
    {
        var lamp = Own(
                "lamps",
                """
                material_format: 1
                kind: lamp
                title: Desk lamp
                spectrum:
                  at_nm:
                    400: 0
                    500: 1
                    700: 1
                  source: own reading
                below_start: unknown
                """
            )
            .Lamp("own")
            .Material!;
        Assert.Equal(400, lamp.StartsAtNm);
        Assert.True(lamp.LacksNearUltraviolet);
        Assert.Equal(0.5, lamp.RelativeSpectrum.Value[(450 - 340) / 5], tolerance: 1e-12);
        Assert.Equal(0, lamp.RelativeSpectrum.Value[0]);
    }

    [Fact]
    public void A_dark_board_read_in_air_is_warned_about()
    {
        var loaded = Board(
            InMemoryMaterials
                .Shipped("data/boards/black-mask.yaml")
                .Replace("under resin", "in air", StringComparison.Ordinal)
        );
        Assert.NotNull(loaded.Material);
        Assert.Equal([MaterialProblemTexts.DarkerThanItsSurface(340)], Texts(loaded));
    }

    [Theory]
    [InlineData("")]
    [InlineData("- a\n- b\n")]
    [InlineData("material_format: [1\n")]
    [InlineData("material_format: 1\nkind: board\ntitle: x\nreflectance:\n  at_nm: 5\n  source:\n")]
    [InlineData("material_format: 1\nkind: board\ntitle: x\ntaken: in air\nreflectance: []\n")]
    [InlineData(
        "material_format: 1\nkind: board\ntitle: x\ntaken: in air\nreflectance:\n  at_nm: {}\n  source: label\n"
    )]
    public void A_broken_file_gives_problems_and_never_an_exception(string text)
    {
        var loaded = Board(text);
        Assert.Null(loaded.Material);
        Assert.NotEmpty(loaded.Problems);
    }

    private static Loaded<Resin> Resin(string find, string replace)
    {
        string text = InMemoryMaterials.Shipped("data/resins/epoxy-clear-slow.yaml");
        Assert.Contains(find, text, StringComparison.Ordinal);
        int at = text.IndexOf(find, StringComparison.Ordinal);
        return Own("resins", text[..at] + replace + text[(at + find.Length)..]).Resin("own");
    }

    private static Loaded<Pigment> Pigment(string text) => Own("pigments", text).Pigment("own");

    private static Loaded<Board> Board(string text) => Own("boards", text).Board("own");

    private static Shelf Own(string folder, string text) =>
        new(new InMemoryMaterials((Path.Replace("/x/", $"/{folder}/", StringComparison.Ordinal), text)));

    private static IEnumerable<string> Texts<T>(Loaded<T> loaded)
        where T : Material => loaded.Problems.Select(p => p.Text);

    private static int LineOf(string name, string line) =>
        Array.IndexOf(InMemoryMaterials.Shipped($"data/{name}.yaml").Split('\n'), line) + 1;
}
