using System.Collections.Immutable;
using GlowMix.Recipes;

namespace GlowMix.Choosing;

/// <summary>What a search for a balance found.</summary>
public sealed record BalanceAnswer
{
    /// <summary>What was turned.</summary>
    public required ImmutableArray<RecipeChoice> Choices { get; init; }

    /// <summary>The recipe's targets.</summary>
    public required ImmutableArray<RecipeTarget> Targets { get; init; }

    /// <summary>Colour temperature of the white aimed at, K; null for the bare board's own white.</summary>
    public required double? WhiteCctK { get; init; }

    /// <summary>When the glow is judged, min.</summary>
    public required double GlowAtMinutes { get; init; }

    /// <summary>Designs tried.</summary>
    public required int TriedCount { get; init; }

    /// <summary>
    /// How many of them with their grains settled, as everything that follows is; the others, evenly spread, only showed where to
    /// look.
    /// </summary>
    public required int SettledCount { get; init; }

    /// <summary>Designs of the even grid, the part of those tried that shares can be taken from.</summary>
    public required int GridCount { get; init; }

    /// <summary>How many of the grid meet every target.</summary>
    public required int GridFeasibleCount { get; init; }

    /// <summary>Null where no range is searched.</summary>
    public required BalanceMap? Map { get; init; }

    /// <summary>The trade-off among designs that meet every target, whitest first; empty if none does.</summary>
    public required ImmutableArray<BalanceDesign> Front { get; init; }

    /// <summary>The best compromise of the front; null if it is empty.</summary>
    public required BalanceDesign? Recommended { get; init; }

    /// <summary>What keeps it from being better; empty if nothing but that whiter is darker.</summary>
    public required ImmutableArray<BalanceLimit> HeldBy { get; init; }

    /// <summary>What keeps the whitest of the front from being whiter; empty if it is as white as can be.</summary>
    public required ImmutableArray<BalanceLimit> WhitestHeldBy { get; init; }

    /// <summary>What keeps the brightest of the front from being brighter; empty if it is as bright as can be.</summary>
    public required ImmutableArray<BalanceLimit> BrightestHeldBy { get; init; }

    /// <summary>Share of the draws that meet every target at the recommended design, 0 to 1; null if nothing was drawn.</summary>
    public required double? ShareOfDraws { get; init; }

    /// <summary>How many draws that share is of.</summary>
    public required int DrawCount { get; init; }

    /// <summary>Where no design meets every target: single targets to relax, the least first; may be empty.</summary>
    public required ImmutableArray<BalanceRelaxation> Relaxations { get; init; }

    /// <summary>Where no design meets every target: the one that misses them least.</summary>
    public required BalanceDesign? Nearest { get; init; }

    /// <summary>False if the search was stopped before its end.</summary>
    public required bool IsComplete { get; init; }
}
