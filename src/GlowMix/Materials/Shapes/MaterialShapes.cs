using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;

namespace GlowMix.Materials.Shapes;

/// <summary>What a material's file may hold, kind by kind, in canonical order.</summary>
public static class MaterialShapes
{
    /// <summary>The shape of a kind of material.</summary>
    public static MappingShape Of(MaterialKind kind) =>
        new([
            new(
                "material_format",
                new NumberShape(NumberRange.Between(MaterialFile.Format, MaterialFile.Format), IsWhole: true),
                "Number of the format; the first key.",
                IsNeeded: true
            ),
            new("kind", new TextShape { Only = [kind.Word()] }, "What it is.", IsNeeded: true),
            new("title", new TextShape(), "One line for people.", IsNeeded: true),
            new("cautions", new ListShape(new TextShape()), "What can hurt, one sentence or two an item."),
            .. LenderOf(kind),
            .. KeysOf(kind),
        ])
        {
            Lender = kind is MaterialKind.Resin or MaterialKind.Pigment ? "like" : null,
            OneNeededOf = kind is MaterialKind.Led ? LedShape.OneNeededOf : [],
            Exclusive = kind switch
            {
                MaterialKind.Resin or MaterialKind.Pigment => [("refractive_index", "refractive_index_d")],
                MaterialKind.Led => LedShape.Exclusive,
                _ => [],
            },
        };

    private static ImmutableArray<KeyShape> LenderOf(MaterialKind kind) =>
        kind is MaterialKind.Resin or MaterialKind.Pigment
            ?
            [
                new(
                    "like",
                    new TextShape { Only = ShippedData.Names(kind) },
                    "A material that travels with the program and lends every entry that is not written here."
                ),
            ]
            : [];

    private static ImmutableArray<KeyShape> KeysOf(MaterialKind kind) =>
        kind switch
        {
            MaterialKind.Led => LedShape.Keys(),
            MaterialKind.Resin => ResinShape.Keys(),
            MaterialKind.Pigment => PigmentShape.Keys(),
            MaterialKind.Board => BoardShape.Keys(),
            MaterialKind.Lamp => LampShape.Keys(),
            MaterialKind.Criterion => CriterionShape.Keys(),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
}
