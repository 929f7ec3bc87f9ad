using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>A published criterion for markings, to be set beside a prediction. An estimate is no test of it.</summary>
public sealed record Criterion : Material
{
    /// <summary>The document with its year.</summary>
    public required Sourced<string> Document { get; init; }

    /// <summary>Clause, table or class; null if not known.</summary>
    public required string? Clause { get; init; }

    /// <summary>The test charge.</summary>
    public required CriterionCharge Charge { get; init; }

    /// <summary>What it asks of the luminance.</summary>
    public required Sourced<CriterionLimits> Limits { get; init; }

    /// <summary>What it asks beyond luminance, which no prediction tells.</summary>
    public ImmutableArray<string> AsksAlso { get; init; } = [];
}
