using GlowMix.Console.Texts;
using GlowMix.Materials;

namespace GlowMix.Console.Tests.Commands;

public sealed class MaterialsCommandTests : IDisposable
{
    private const string Own = """
        material_format: 1
        kind: board
        title: Grey paint
        taken: under resin
        reflectance:
          at_nm:
            340: 0.4
            780: 0.4
          source: own reading
        """;

    private readonly CommandLine line = new();

    public void Dispose() => line.Dispose();

    [Fact]
    public void The_shelf_lists_every_material_of_every_kind()
    {
        Assert.Equal(ExitCode.Done, line.Run("materials"));
        foreach (var kind in KindWords.All)
        {
            Assert.Contains(kind.Folder(), line.OutLines);
            Assert.All(
                Shelf.ShippedNames(kind),
                name => Assert.Contains($"  {name} ", line.Out, StringComparison.Ordinal)
            );
        }
        Assert.Equal(Enum.GetValues<MaterialKind>(), KindWords.All);
        Assert.DoesNotContain("cannot be used", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_material_shows_its_facts_with_their_sources()
    {
        foreach (var kind in KindWords.All)
        {
            foreach (string name in Shelf.ShippedNames(kind))
            {
                Assert.Equal(ExitCode.Done, line.Run("materials", kind.Word(), name));
                foreach (var fact in new Shelf().Any(kind, name).Material!.Facts)
                {
                    Assert.Contains($" {fact.Key}  ", line.Out, StringComparison.Ordinal);
                }
                Assert.DoesNotContain("  table", line.Out, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void A_name_alone_will_do_and_what_is_assumed_is_marked()
    {
        Assert.Equal(ExitCode.Done, line.Run("materials", "green-aluminate"));
        Assert.Contains("? grain_gsd  1.5", line.OutLines);
        Assert.Contains(
            "  sheet_points  mcd_m2_at_minutes 2: 1100, 10: 260",
            line.Out,
            StringComparison.Ordinal
        );
        Assert.Contains("The sheet reaches 60 min", line.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Ones_own_materials_stand_among_them()
    {
        line.Write("materials/boards/grey-paint.yaml", Own);
        Assert.Equal(ExitCode.Done, line.Run("materials", "boards"));
        Assert.Contains("  grey-paint  Grey paint (yours)", line.OutLines);
        Assert.Equal(ExitCode.Done, line.Run("materials", "grey-paint"));
        Assert.Contains("materials/boards/grey-paint.yaml", line.OutLines);
    }

    [Theory]
    [InlineData("no kind and no material is called 'pigmant'; did you mean 'pigment'?; kinds: ", "pigmant")]
    [InlineData("no kind of material is called 'paint'", "paint", "grey")]
    [InlineData(
        "no pigment 'green-aluminat' in materials/pigments or on the shelf; did you mean",
        "pigment",
        "green-aluminat"
    )]
    public void What_is_not_there_is_told_with_the_nearest(string text, params string[] words)
    {
        Assert.Equal(ExitCode.Content, line.Run(["materials", .. words]));
        Assert.StartsWith(text, line.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_broken_file_of_ones_own_is_told_with_its_place()
    {
        line.Write(
            "materials/boards/grey-paint.yaml",
            Own.Replace("340: 0.4", "340: 4", StringComparison.Ordinal)
        );
        Assert.Equal(ExitCode.Content, line.Run("materials", "board", "grey-paint"));
        Assert.StartsWith("materials/boards/grey-paint.yaml:7:10: ", line.Error, StringComparison.Ordinal);
    }
}
