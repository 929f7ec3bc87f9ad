using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using GlowMix.Documents.Tidying;
using GlowMix.Materials;
using GlowMix.Materials.Shapes;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;
using GlowMix.Tests.Recipes;

namespace GlowMix.Tests.Documents.Tidying;

public class TidyTextTests
{
    [Fact]
    public void Keys_values_and_comments_find_their_places()
    {
        const string Untidy = """
            # My stair.

            # about the recipe
            format:   1
            led: {count: 60, material: warm-white-3000}   # from the reel
            # calibration: later   (optional)

            # the slow one
            resin:    epoxy-clear-slow
            layers:
            - depth_mm: 2.50   # from the board
              # what glows
              name: glow
              loading_percent: +20 # by mass
              pigment: green-aluminate


            -   depth_mm: .5
                # clear
            # that is all of the layers
            targets: [{figure: lit.duv, at_most: 2E-2}]
            criteria: []
            # the end
            """;
        const string Tidy = """
            # My stair.

            # about the recipe
            format: 1

            # the slow one
            resin: epoxy-clear-slow
            led:                                          # from the reel
              material: warm-white-3000
              count: 60
            # calibration: later   (optional)
            layers:
              # what glows
              - name: glow
                depth_mm: 2.50  # from the board
                pigment: green-aluminate
                loading_percent: 20  # by mass

              - depth_mm: 0.5
                # clear
            # that is all of the layers
            targets:
              - figure: lit.duv
                at_most: 0.02
            criteria: []
            # the end

            """;
        Assert.Equal(Tidy.ReplaceLineEndings("\n"), Tidied(Untidy));
        Assert.Equal(Tidy.ReplaceLineEndings("\n"), Tidied(Tidy));
    }

    [Fact]
    public void Line_ends_stay_what_they_are()
    {
        const string Windows = "format: 1\r\nled:\r\n    material: warm-white-3000\r\n";
        Assert.Equal("format: 1\r\nled:\r\n  material: warm-white-3000\r\n", Tidied(Windows));
    }

    [Fact]
    public void Texts_over_several_lines_are_moved_and_not_changed()
    {
        const string Note = "title: |\n      one\n        two # no comment\n      three\nformat: 1\n";
        Assert.Equal("format: 1\ntitle: |\n      one\n        two # no comment\n      three\n", Tidied(Note));
        Assert.Equal(
            "format: 1\ntitle: \"a\n  b\" # c\n".Replace(" # c", "  # c", StringComparison.Ordinal),
            Tidied("title: \"a\n  b\" # c\nformat: 1\n")
        );
    }

    [Fact]
    public void What_cannot_be_tidied_without_a_loss_is_left() =>
        // With '+' the empty lines at the end belong to the text.
        Assert.Null(TidyText.Of(Document.Read("title: |+\n  a\n\n\nformat: 1\n", "a"), RecipeShape.Whole));

    [Theory]
    [InlineData("format: 1\ntitle: 007\n")]
    [InlineData("format: 1\ntitle: \"# no comment\"\n")]
    [InlineData("format: 1\ncharge:\n  steps:\n    - light: dark\n      minutes: 5\n    -\n")]
    [InlineData("format: 1\nled:\n")]
    public void A_text_that_only_looks_like_work_stays(string text) => Assert.Equal(text, Tidied(text));

    [Fact]
    public void Every_shipped_recipe_and_material_is_tidy()
    {
        var untidy = new List<string>();
        foreach (
            string file in Directory
                .GetFiles(Sample.Folder(), "*.yaml")
                .Where(f => !f.EndsWith(".figures.yaml", StringComparison.Ordinal))
        )
        {
            string text = File.ReadAllText(file);
            if (Tidied(text) != text)
            {
                untidy.Add(file);
            }
        }
        foreach (var kind in Enum.GetValues<MaterialKind>())
        {
            foreach (
                string file in Directory.GetFiles(
                    Path.Combine(Sample.Folder(), "..", "data", kind.Folder()),
                    "*.yaml"
                )
            )
            {
                var document = Document.Read(File.ReadAllText(file), file);
                if (TidyText.Of(document, MaterialShapes.Of(kind)) != document.Text)
                {
                    untidy.Add(file);
                }
            }
        }
        Assert.Empty(untidy);
    }

    [Fact]
    public void A_set_of_readings_has_an_order_and_a_number_style_of_its_own()
    {
        const string Untidy = """
            readings:
            - {state: bare, file: "01.txt"}
            - charge: {steps: [{minutes: +5, illuminance_lx: 1E3, light: daylight-d65}], start: empty}
              noise_percent: .50    # of the meter
              state: decay
              # the second day
              file: decay.txt
            comparable_percent: 05
            readings_format: 1
            """;
        const string Tidy = """
            readings_format: 1
            comparable_percent: 5
            readings:
              - file: "01.txt"
                state: bare
              # the second day
              - file: decay.txt
                state: decay
                charge:
                  start: empty
                  steps:
                    - light: daylight-d65
                      illuminance_lx: 1000
                      minutes: 5
                noise_percent: 0.50  # of the meter

            """;
        Assert.Equal(Tidy.ReplaceLineEndings("\n"), Tidied(Untidy, ReadingsSetShape.Whole));
        Assert.NotNull(ReadingsSetFile.Read(new FileText("a.yaml", Tidy)).Set);
        string shipped = File.ReadAllText(
            Path.Combine(Sample.Folder(), "readings", "stair-edge.readings.yaml")
        );
        Assert.Equal(shipped, Tidied(shipped, ReadingsSetShape.Whole));
    }

    private static string? Tidied(string text) => Tidied(text, RecipeShape.Whole);

    private static string? Tidied(string text, Shape shape)
    {
        var document = Document.Read(text, "a.yaml");
        Assert.Empty(document.Problems);
        string? tidy = TidyText.Of(document, shape);
        if (tidy is not null)
        {
            Assert.Equal(tidy, TidyText.Of(Document.Read(tidy, "a.yaml"), shape));
        }
        return tidy;
    }
}
