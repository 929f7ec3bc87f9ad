using System.Collections.Immutable;

namespace GlowMix.Readings.Fit;

/// <summary>A number that was held at what the materials have.</summary>
/// <param name="Key">A short stable name.</param>
/// <param name="Words">What it is, in words.</param>
/// <param name="Value">What it was held at.</param>
/// <param name="ToldTogetherWith">Words of those it cannot be told apart from; none where the readings hardly tell it at all.</param>
public sealed record HeldNumber(
    string Key,
    string Words,
    double Value,
    ImmutableArray<string> ToldTogetherWith
);
