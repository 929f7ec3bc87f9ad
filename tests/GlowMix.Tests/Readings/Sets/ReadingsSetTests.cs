using System.Text;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Readings.Sets;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Readings.Sets;

public sealed class ReadingsSetTests
{
    private const string Good = """
        readings_format: 1
        corrected: yes
        comparable_percent: 5
        readings:
          - file: bare.txt
            state: bare
          - file: potted.txt
            state: potted
            depth_mm: 3
          - file: glow.txt
            state: pigmented
            tile: 2
          - file: decay.txt
            state: decay
            loading_percent: 12.5
            noise_percent: 3
            charge:
              start: empty
              steps:
                - light: daylight-d65
                  illuminance_lx: 1000
                  minutes: 5
            darkness_temperature_c: 15

        """;

    [Fact]
    public void A_set_tells_which_reading_belongs_to_which_state()
    {
        var (set, problems) = ReadingsSetFile.Read(new FileText("a.readings.yaml", Good));
        Assert.Empty(problems);
        Assert.Equal((true, 5), (set!.IsCorrected, set.ComparablePercent));
        Assert.Equal(
            ["bare", "potted, 3 mm", "pigmented, tile 2", "decay, 12.5 %"],
            set.Readings.Select(SetTexts.StateOf)
        );
        Assert.Equal(1000, Assert.Single(set.Readings[3].Charge!.Steps).IlluminanceLx);
        Assert.Equal((3, 15), (set.Readings[3].NoisePercent, set.Readings[3].DarknessTemperatureC));
    }

    [Theory]
    [InlineData("readings_format: 1\n", "", ": needed: 'readings_format: 1' as the first key")]
    [InlineData("state: potted", "state: pottde", "8:12: state is 'pottde'")]
    [InlineData("    tile: 2", "    tile: 4", "12:11: tile is 4; allowed: 1 to 3")]
    [InlineData("    tile: 2", "    tile: 2\n    loading_percent: 9", "loading_percent")]
    [InlineData("    state: bare", "    state: level", "a lit reading says nothing without the bare board")]
    [InlineData(
        "    state: potted\n    depth_mm: 3",
        "    state: bare",
        "7:5: a second bare reading; allowed: one"
    )]
    [InlineData("    depth_mm: 3", "    dept_mm: 3", "9:5: unknown key 'dept_mm'; did you mean 'depth_mm'?")]
    [InlineData("corrected: yes", "corrected: maybe", "corrected is 'maybe'")]
    [InlineData("light: daylight-d65", "lite: daylight-d65", "unknown key 'lite'")]
    public void What_is_wrong_with_a_set_is_told_with_its_place(
        string written,
        string instead,
        string problem
    )
    {
        Assert.Contains(written, Good, StringComparison.Ordinal);
        var (set, problems) = ReadingsSetFile.Read(
            new FileText("a.readings.yaml", Good.Replace(written, instead, StringComparison.Ordinal))
        );
        Assert.Null(set);
        Assert.Contains(problems, p => p.ToString().Contains(problem, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("potted", "depth_mm: 0.5", false, "0.5 mm leave the packages of 0.7 mm in air")]
    [InlineData("decay", "", true, "d.txt: the decay is relative")]
    public void What_a_recipe_has_no_state_for_and_what_tells_little_is_told(
        string state,
        string more,
        bool isUsed,
        string problem
    )
    {
        string text =
            $"readings_format: 1\nreadings:\n  - file: b.txt\n    state: bare\n  - file: d.txt\n    state: {state}\n    {more}\n";
        var set = ReadingsSetFile.Read(new FileText("a.readings.yaml", text)).Set!;
        var assembled = SetAssembly.Of(
            new TestRecipe { Led = "warm-white-3000" }.Document,
            set,
            new Predictor(new Shelf()),
            path =>
                new(
                    path,
                    Encoding.UTF8.GetBytes(
                        path == "d.txt" && state == "decay"
                            ? "minutes;relative\n1;100\n2;50\n4;25\n8;12\n"
                            : Spectrum
                    )
                )
        );
        Assert.Equal(isUsed, assembled.Readings is { Glows: [{ IsRelative: true }] });
        Assert.Contains(assembled.Problems, p => p.ToString().Contains(problem, StringComparison.Ordinal));
    }

    [Fact]
    public void Test_tiles_are_called_as_their_sheet_calls_them_and_take_their_loading()
    {
        var files = TileFiles.Of("stair-edge");
        Assert.Equal("stair-edge.readings.yaml", TileFiles.SetOf("stair-edge"));
        Assert.Equal("stair-edge.bare.txt", files[0].File);
        Assert.Equal("stair-edge.tile-3.decay.txt", files[^1].File);
        var recipe = new TestRecipe().Document.Recipe!;
        var (half, _) = RecipeState.Of(recipe, files[1], 0.7, "led");
        Assert.Equal(10, half!.Layers[0].LoadingPercent);
    }

    private static string Spectrum
    {
        get
        {
            var text = new StringBuilder("nm\tW/m2/nm\n");
            for (int nm = 380; nm <= 780; nm += 2)
            {
                text.Append(nm).Append('\t').Append(1 + (nm % 7)).Append('\n');
            }
            return text.ToString();
        }
    }
}
