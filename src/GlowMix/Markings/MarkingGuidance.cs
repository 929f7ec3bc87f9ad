using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Pieces;

namespace GlowMix.Markings;

/// <summary>
/// A piece's predicted glow beside published criteria for markings. An estimate is no test: only a cured sample measured by an
/// accredited laboratory, and the authority having jurisdiction, decide. Immutable.
/// </summary>
public sealed record MarkingGuidance
{
    /// <summary>The piece.</summary>
    public required Piece Piece { get; init; }

    /// <summary>One a criterion, in the order asked for.</summary>
    public required ImmutableArray<CriterionComparison> Criteria { get; init; }

    /// <summary>Draws behind the bands; 0 where they are those of the bounding runs.</summary>
    public required int DrawCount { get; init; }

    /// <summary>The recipe's own room; null without pigment.</summary>
    public required RoomGlow? Room { get; init; }

    /// <summary>The recipe's charge in terms of daylight; null without pigment or without light.</summary>
    public required ChargeBridge? Bridge { get; init; }

    /// <summary>Errors of criterion files that only show when they are computed, such as a lamp that is not there.</summary>
    public required ImmutableArray<Problem> Problems { get; init; }
}
