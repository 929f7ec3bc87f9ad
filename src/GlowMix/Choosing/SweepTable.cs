using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Choosing;

/// <summary>What a sweep found.</summary>
/// <param name="Axes">What was varied, with full key paths.</param>
/// <param name="Figures">The figures asked for.</param>
/// <param name="Points">The last axis changes fastest; those that were not reached are left out.</param>
/// <param name="DrawCount">Draws behind the bands of each point; 0 for those of the few bounding runs.</param>
/// <param name="IsComplete">False if the sweep was stopped before its end.</param>
public sealed record SweepTable(
    ImmutableArray<SweepAxis> Axes,
    ImmutableArray<Figure> Figures,
    ImmutableArray<SweepPoint> Points,
    int DrawCount,
    bool IsComplete
);
