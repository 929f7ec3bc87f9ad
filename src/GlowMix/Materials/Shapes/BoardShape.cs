using System.Collections.Immutable;
using GlowMix.Documents.Shapes;
using static GlowMix.Materials.Shapes.ShapeParts;

namespace GlowMix.Materials.Shapes;

/// <summary>What the file of a board may hold.</summary>
internal static class BoardShape
{
    /// <summary>The keys, in canonical order.</summary>
    public static ImmutableArray<KeyShape> Keys() =>
        [
            new(
                "taken",
                new TextShape { Only = ["under resin", "in air"] },
                "How the reflectance was taken.",
                IsNeeded: true
            ),
            Table(
                "reflectance",
                "at_nm",
                MaterialRanges.Share,
                "Diffuse reflectance, 0 to 1, at wavelengths in nm."
            ),
        ];
}
