using System.Collections.Immutable;

namespace GlowMix.Choosing;

/// <summary>Where in the two ranges that matter most every target can be met, whatever the other choices.</summary>
/// <param name="AcrossKeyPath">The key along a row.</param>
/// <param name="Across">Its values, rising.</param>
/// <param name="UpKeyPath">The key along a column; null where only one range is searched.</param>
/// <param name="Up">Its values, rising; one, not to be told, where there is no such key.</param>
/// <param name="Missed">
/// For each value up, then each across: the targets missed, by their index in the recipe, of the design there that misses fewest;
/// empty where all are met.
/// </param>
public sealed record BalanceMap(
    string AcrossKeyPath,
    ImmutableArray<double> Across,
    string? UpKeyPath,
    ImmutableArray<double> Up,
    ImmutableArray<ImmutableArray<ImmutableArray<int>>> Missed
);
