using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Predictions;

namespace GlowMix.Markings;

/// <summary>A piece's glow, charged as a published criterion says, beside that criterion's limits. Immutable.</summary>
public sealed record CriterionComparison
{
    /// <summary>The criterion, with its document, clause and charge.</summary>
    public required Criterion Criterion { get; init; }

    /// <summary>
    /// One a limit. Where the charge is known and there is no limit, the luminances that such a document has one state, with
    /// nothing to judge them by.
    /// </summary>
    public required ImmutableArray<LimitComparison> Limits { get; init; }

    /// <summary>Minutes until 0.3 mcd/m², charged so; null where the charge is not known.</summary>
    public required Band? MinutesTo03McdPerM2 { get; init; }

    /// <summary>Why nothing is judged, in words; null where something is.</summary>
    public required string? NotJudgedBecause { get; init; }

    /// <summary>The worst of its limits: above only if all are.</summary>
    public MarkingState State =>
        NotJudgedBecause is not null ? MarkingState.NotJudged
        : Limits.Any(l => l.State == MarkingState.Below) ? MarkingState.Below
        : Limits.All(l => l.State == MarkingState.Above) ? MarkingState.Above
        : MarkingState.TooClose;

    /// <summary>The limit that the low end comes least far to; null where nothing is judged.</summary>
    public LimitComparison? Tightest =>
        NotJudgedBecause is null ? Limits.MinBy(l => l.LowShareOfLimit) : null;

    /// <summary>Document, charge or limits are told from memory.</summary>
    public bool IsFromMemory =>
        new[]
        {
            Criterion.Document.Mark,
            Criterion.Limits.Mark,
            Criterion.Charge.Lamp.Mark,
            Criterion.Charge.IlluminanceLx.Mark,
            Criterion.Charge.Minutes.Mark,
        }.Contains(SourceMark.FromMemory);
}
