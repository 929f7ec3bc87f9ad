using GlowMix.Casting;
using GlowMix.Recipes;

namespace GlowMix.Readings.Sets;

/// <summary>The recipe as it was when a reading was made.</summary>
internal static class RecipeState
{
    private const string ClearLayer = "clear";
    private const double MostLoadingPercent = 80;

    /// <summary>The recipe of a reading.</summary>
    /// <param name="recipe">The recipe of the piece.</param>
    /// <param name="reading">The reading; not the bare one.</param>
    /// <param name="packageHeightMm">Height of its LED packages.</param>
    /// <param name="led">The LED's name.</param>
    /// <returns>The recipe, or why there is none.</returns>
    public static (Recipe? Recipe, string? Problem) Of(
        Recipe recipe,
        SetReading reading,
        double packageHeightMm,
        string led
    )
    {
        double depthMm = reading.DepthMm ?? recipe.Layers.Sum(l => l.DepthMm);
        return reading.State switch
        {
            ReadingState.Level => packageHeightMm > 0
                ? (Clear(recipe, packageHeightMm), null)
                : (null, SetTexts.FlatPackage(led)),
            ReadingState.Potted => depthMm > packageHeightMm
                ? (Clear(recipe, depthMm), null)
                : (null, SetTexts.NotAbovePackages(depthMm, packageHeightMm)),
            _ => WithPigment(recipe, reading),
        };
    }

    private static Recipe Clear(Recipe recipe, double depthMm) =>
        recipe with
        {
            Layers = [new RecipeLayer { Name = ClearLayer, DepthMm = depthMm }],
        };

    private static (Recipe?, string?) WithPigment(Recipe recipe, SetReading reading)
    {
        int pigmented = recipe.Layers.Count(IsPigmented);
        if (pigmented == 0)
        {
            return (null, SetTexts.NoPigment);
        }
        if (pigmented > 1 && (reading.DepthMm ?? reading.LoadingPercent) is not null)
        {
            return (null, SetTexts.SeveralPigmented);
        }
        double factor = reading.Tile is int tile ? TestTiles.Factors[tile - 1] : 1;
        return (
            recipe with
            {
                Layers =
                [
                    .. recipe.Layers.Select(layer =>
                        IsPigmented(layer)
                            ? layer with
                            {
                                DepthMm = reading.DepthMm ?? layer.DepthMm,
                                LoadingPercent = Math.Min(
                                    MostLoadingPercent,
                                    reading.LoadingPercent ?? (factor * layer.LoadingPercent!.Value)
                                ),
                            }
                            : layer
                    ),
                ],
                Charge = reading.Charge ?? recipe.Charge,
                Darkness = recipe.Darkness with
                {
                    TemperatureC = reading.DarknessTemperatureC ?? recipe.Darkness.TemperatureC,
                },
            },
            null
        );
    }

    private static bool IsPigmented(RecipeLayer layer) =>
        layer is { PigmentName: not null, LoadingPercent: > 0 };
}
