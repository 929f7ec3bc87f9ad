using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>
/// One piece as its maker wrote it down: what was given, with null for what was not. Names of materials are not yet looked
/// up and no default is filled in. Made by <see cref="RecipeDocument"/> only, free of contradictions.
/// </summary>
public sealed record Recipe
{
    private readonly Document document;

    internal Recipe(Document document) => this.document = document;

    /// <summary>The recipe's file as the user named it.</summary>
    public string File => document.Name;

    /// <summary>What the piece is called.</summary>
    public string? Title { get; init; }

    /// <summary>The resin of all layers: a material's name or the path of its file.</summary>
    public required string ResinName { get; init; }

    /// <summary>The calibration file, relative to the recipe.</summary>
    public string? CalibrationPath { get; init; }

    /// <summary>The LEDs and how they are driven.</summary>
    public required RecipeLed Led { get; init; }

    /// <summary>The board the LEDs sit on: a material's name or the path of its file.</summary>
    public string? BoardName { get; init; }

    /// <summary>The channel.</summary>
    public required RecipePour Pour { get; init; }

    /// <summary>1 to 12, from the board upwards.</summary>
    public required ImmutableArray<RecipeLayer> Layers { get; init; }

    /// <summary>How the resin is mixed.</summary>
    public required RecipeMixing Mixing { get; init; }

    /// <summary>What light the piece gets before the dark.</summary>
    public required RecipeCharge Charge { get; init; }

    /// <summary>The dark after the last light.</summary>
    public required RecipeDarkness Darkness { get; init; }

    /// <summary>What the piece should reach; may be empty.</summary>
    public required ImmutableArray<RecipeTarget> Targets { get; init; }

    /// <summary>What the search for a balance may turn.</summary>
    public required RecipeBalance Balance { get; init; }

    /// <summary>Criteria to put the glow beside; may be empty.</summary>
    public required ImmutableArray<string> CriteriaNames { get; init; }

    /// <summary>What the materials cost.</summary>
    public required RecipePrices Prices { get; init; }

    /// <summary>
    /// Where the value of a key stands, such as 'layers.glow.pigment' or 'targets.1.figure'; if it is not written, the
    /// nearest section around it that is; null if there is none.
    /// </summary>
    public Place? PlaceOf(string keyPath)
    {
        for (string path = keyPath; path.Length > 0; path = path[..Math.Max(0, path.LastIndexOf('.'))])
        {
            if (KeyPaths.Find(document.Root!, path) is { } node)
            {
                return node.Place;
            }
        }
        return null;
    }

    /// <summary>A problem with the value of a key, for stages that know more than the recipe does.</summary>
    public Problem ProblemAt(string keyPath, string text, Severity severity = Severity.Error) =>
        new(File, PlaceOf(keyPath), text, severity);
}
