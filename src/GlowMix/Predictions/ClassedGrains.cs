using System.Collections.Immutable;
using GlowMix.Casting;
using GlowMix.Optics.Grains;

namespace GlowMix.Predictions;

/// <summary>The grains of a pigment in a resin, in classes of equal mass from the finest to the coarsest. Immutable.</summary>
internal sealed class ClassedGrains
{
    /// <param name="classes">One table a class, finest first.</param>
    public ClassedGrains(ImmutableArray<GrainTable> classes)
    {
        Classes = classes;
        Whole = Mixed([.. Enumerable.Repeat(1.0 / GrainClasses.Count, GrainClasses.Count)]);
    }

    /// <summary>One table a class, finest first.</summary>
    public ImmutableArray<GrainTable> Classes { get; }

    /// <summary>All classes together, as poured.</summary>
    public GrainTable Whole { get; }

    /// <summary>A mix of the classes.</summary>
    /// <param name="shares">Share of the grains' volume in each class, finest first; together 1.</param>
    public GrainTable Mixed(ImmutableArray<double> shares) => GrainTable.Mixture(Classes, shares.AsSpan());
}
