using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;
using GlowMix.Tests.Materials;

namespace GlowMix.Tests.Casting;

/// <summary>Invented pieces of shipped materials, with a resin of round numbers.</summary>
internal static class SamplePieces
{
    /// <summary>A strip of 500 × 12 mm, 60 packages, glow and cover.</summary>
    public const string Strip = """
        format: 1
        resin: round-epoxy
        led:
          material: warm-white-3000
          count: 60
        pour:
          length_mm: 500
          width_mm: 12
        layers:
          - name: glow
            depth_mm: 2.5
            pigment: green-aluminate
            loading_percent: 20
          - name: cover
            depth_mm: 0.5
        mixing:
          temperature_c: 25
          waste_percent: 10
          vacuum_min: 15
          scale_step_g: 0.01
        prices:
          resin_per_kg: 28
          pigment_per_kg: 190

        """;

    private static readonly Shelf Shelf = new(
        new InMemoryMaterials(
            (
                "materials/resins/round-epoxy.yaml",
                """
                material_format: 1
                kind: resin
                title: Invented epoxy of round numbers
                like: epoxy-clear-slow
                density_mix_g_cm3:
                  value: 1.1
                  source: assumed
                density_part_a_g_cm3:
                  value: 1.1
                  source: assumed
                density_part_b_g_cm3:
                  value: 1.1
                  source: assumed
                mix_ratio:
                  by: mass
                  part_a: 2
                  part_b: 1
                  source: assumed
                max_pour_depth_mm:
                  value: 30
                  source: assumed

                """
            )
        )
    );

    public static Piece Of(string recipe)
    {
        var reading = PieceAssembly.Of(RecipeDocument.Read(recipe, "strip.yaml"), Shelf);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error));
        return reading.Piece!;
    }

    public static Piece With(string old, string changed)
    {
        Assert.Contains(old, Strip, StringComparison.Ordinal);
        return Of(Strip.Replace(old, changed, StringComparison.Ordinal));
    }
}
