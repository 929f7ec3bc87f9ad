using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;
using static GlowMix.Materials.Shapes.ShapeParts;

namespace GlowMix.Materials.Shapes;

/// <summary>What the file of a criterion may hold.</summary>
internal static class CriterionShape
{
    /// <summary>The keys, in canonical order.</summary>
    public static ImmutableArray<KeyShape> Keys() =>
        [
            Word("document", "The document with its edition.", []),
            new("clause", new TextShape(), "The clause, or unknown.", IsNeeded: true),
            new(
                "charge",
                new MappingShape([
                    Word("lamp", "A lamp of the shelf, or unknown.", ShippedData.Names(MaterialKind.Lamp)),
                    NumberOrUnknown("illuminance_lx", NumberRange.Above(0, 200000), "lx, or unknown."),
                    NumberOrUnknown("minutes", NumberRange.Above(0, 100000), "Minutes, or unknown."),
                ]),
                "The charge of its test.",
                IsNeeded: true
            ),
            new(
                "limits",
                new MappingShape([
                    new(
                        "value",
                        new TextShape { Only = ["unknown", "none"] },
                        "Where there is no table of limits."
                    ),
                    new(
                        "mcd_m2_at_minutes",
                        new TableShape(new(NumberRange.Above(0, 1e6))),
                        "Least luminance in mcd/m² at minutes in the dark."
                    ),
                    Source,
                ])
                {
                    OneNeededOf =
                    [
                        ["value", "mcd_m2_at_minutes"],
                    ],
                },
                "What it asks for.",
                IsNeeded: true
            ),
            new(
                "asks_also",
                new ListShape(new TextShape()),
                "What else it asks for and this program does not predict."
            ),
        ];
}
