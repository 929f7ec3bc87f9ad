using System.Collections.Immutable;
using System.Globalization;
using GlowMix.Casting;

namespace GlowMix.Readings.Sets;

/// <summary>What the readings of a recipe's test tiles are called, and what they belong to.</summary>
public static class TileFiles
{
    /// <summary>The set that names them, or others: 'stair-edge.readings.yaml'.</summary>
    /// <param name="recipeName">Name of the recipe's file without its ending.</param>
    public static string SetOf(string recipeName) => $"{recipeName}.readings.yaml";

    /// <summary>The bare board, then each tile lit and in the dark.</summary>
    /// <param name="recipeName">Name of the recipe's file without its ending.</param>
    public static ImmutableArray<SetReading> Of(string recipeName)
    {
        var readings = ImmutableArray.CreateBuilder<SetReading>();
        readings.Add(new($"{recipeName}.bare.txt", ReadingState.Bare));
        for (int tile = 1; tile <= TestTiles.Factors.Length; tile++)
        {
            string name = string.Create(CultureInfo.InvariantCulture, $"{recipeName}.tile-{tile}");
            readings.Add(new($"{name}.lit.txt", ReadingState.Pigmented) { Tile = tile });
            readings.Add(new($"{name}.decay.txt", ReadingState.Decay) { Tile = tile });
        }
        return readings.ToImmutable();
    }
}
