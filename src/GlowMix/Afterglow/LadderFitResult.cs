using System.Collections.Immutable;

namespace GlowMix.Afterglow;

/// <summary>A ladder that reproduces a sheet, or why there is none. Immutable.</summary>
public sealed record LadderFitResult
{
    /// <summary>The ladder; null where the fit was refused.</summary>
    public TrapLadder? Ladder { get; init; }

    /// <summary>Why there is no ladder, for people; null where there is one.</summary>
    public string? Refusal { get; init; }

    /// <summary>
    /// Where the fit was refused, the least capacity with which the sheet could be held, traps per mm³ of pigment; null where
    /// the sample absorbs too little light for any capacity.
    /// </summary>
    public double? NeededCapacityPerMm3 { get; init; }

    /// <summary>Ladder less sheet, % of the sheet, for each point in order of time; empty where refused.</summary>
    public ImmutableArray<double> ResidualsPercent { get; init; } = [];

    /// <summary>Last time the sheet tells, min; later luminances rest on the smoothing.</summary>
    public required double ReachesMinutes { get; init; }
}
