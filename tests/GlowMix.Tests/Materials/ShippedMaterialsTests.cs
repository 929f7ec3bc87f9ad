using System.Text.RegularExpressions;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Tests.Materials;

public partial class ShippedMaterialsTests
{
    private static readonly Shelf Shelf = new();

    public static TheoryData<MaterialKind, string> All
    {
        get
        {
            var all = new TheoryData<MaterialKind, string>();
            foreach (var kind in Enum.GetValues<MaterialKind>())
            {
                foreach (string name in Shelf.ShippedNames(kind))
                {
                    all.Add(kind, name);
                }
            }
            return all;
        }
    }

    public static TheoryData<string> Leds => [.. Shelf.ShippedNames(MaterialKind.Led)];

    public static TheoryData<string> Pigments => [.. Shelf.ShippedNames(MaterialKind.Pigment)];

    public static TheoryData<string> Resins => [.. Shelf.ShippedNames(MaterialKind.Resin)];

    public static TheoryData<string> Criteria => [.. Shelf.ShippedNames(MaterialKind.Criterion)];

    [Fact]
    public void The_shelf_holds_what_the_fact_sheet_lists()
    {
        Assert.Equal(
            ["cool-white-6500", "neutral-white-4000", "warm-white-2700", "warm-white-3000"],
            Shelf.ShippedNames(MaterialKind.Led)
        );
        Assert.Equal(5, Shelf.ShippedNames(MaterialKind.Resin).Length);
        Assert.Equal(9, Shelf.ShippedNames(MaterialKind.Pigment).Length);
        Assert.Equal(4, Shelf.ShippedNames(MaterialKind.Board).Length);
        Assert.Equal(14, Shelf.ShippedNames(MaterialKind.Lamp).Length);
        Assert.Equal(22, Shelf.ShippedNames(MaterialKind.Criterion).Length);
    }

    [Theory, MemberData(nameof(All))]
    public void Each_shipped_material_loads_without_a_word_and_every_number_has_its_source(
        MaterialKind kind,
        string name
    )
    {
        var loaded = Shelf.Any(kind, name);
        Assert.Empty(loaded.Problems);
        Assert.NotNull(loaded.Material);
        Assert.NotEmpty(loaded.Material.Facts);
        Assert.All(loaded.Material.Facts, fact => Assert.NotEmpty(fact.Note.Text));
        Assert.True(loaded.Material.Origin is { IsShipped: true });
    }

    [Theory, MemberData(nameof(All))]
    public void Each_number_of_a_shipped_file_stands_among_the_facts(MaterialKind kind, string name)
    {
        // Every 'source:' of the file is one fact; a file that leans on another has more facts than sources.
        var material = Shelf.Any(kind, name).Material!;
        int sources = SourceLine().Count(material.Origin!.Text);
        Assert.True(material.Facts.Length >= sources, $"{material.Facts.Length} facts, {sources} sources");
    }

    [Theory, MemberData(nameof(Resins))]
    public void A_resin_that_can_hurt_says_so(string name) =>
        Assert.NotEmpty(Shelf.Resin(name).Material!.Cautions);

    [Theory, MemberData(nameof(Pigments))]
    public void A_pigment_warns_of_its_dust(string name) =>
        Assert.Contains(
            Shelf.Pigment(name).Material!.Cautions,
            caution => caution.Contains("dust mask", StringComparison.Ordinal)
        );

    [Theory, MemberData(nameof(Pigments))]
    public void A_sheet_names_materials_of_the_shelf(string name)
    {
        var sheet = Shelf.Pigment(name).Material!.Sheet;
        Assert.NotNull(Shelf.Board(sheet.Backing.Value).Material);
        Assert.NotNull(Shelf.Resin(sheet.Resin.Value).Material);
        Assert.NotNull(Shelf.Lamp(sheet.Lamp.Value).Material);
    }

    [Theory, MemberData(nameof(Pigments))]
    public void Emission_integrates_to_one_and_absorption_never_rises_beyond_its_peak(string name)
    {
        var pigment = Shelf.Pigment(name).Material!;
        Assert.Equal(1, pigment.EmissionPerNm.IntegralOverNm(), tolerance: 1e-12);
        var absorption = pigment.AbsorptionPerMm.Value;
        for (int i = 6; i < WavelengthGrid.Count; i++)
        {
            Assert.True(absorption[i] <= absorption[i - 1]);
        }
    }

    [Theory, MemberData(nameof(Pigments))]
    public void A_decay_falls_from_point_to_point(string name)
    {
        var points = Shelf.Pigment(name).Material!.Sheet.Points.Value;
        Assert.All(
            points.Zip(points.Skip(1)),
            pair => Assert.True(pair.First.LuminanceMcdM2 > pair.Second.LuminanceMcdM2)
        );
    }

    [Theory, MemberData(nameof(Criteria))]
    public void A_criterion_names_lamps_of_the_shelf_and_falling_limits(string name)
    {
        var criterion = Shelf.Criterion(name).Material!;
        if (criterion.Charge.Lamp.Value is { } lamp)
        {
            Assert.NotNull(Shelf.Lamp(lamp).Material);
        }
        var limits = criterion.Limits.Value.Limits;
        Assert.All(
            limits.Zip(limits.Skip(1)),
            pair => Assert.True(pair.First.LeastMcdM2 > pair.Second.LeastMcdM2)
        );
        Assert.NotEmpty(criterion.AsksAlso);
    }

    [GeneratedRegex(@"^\s*source:", RegexOptions.Multiline)]
    private static partial Regex SourceLine();
}
