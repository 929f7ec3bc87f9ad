using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>Trap ladder of a pigment as a decay reading told it, in place of the one behind its sheet. Immutable.</summary>
/// <param name="PerG">Traps in a gram on each of the 13 rungs, fastest first.</param>
/// <param name="TrappingEfficiencyAt20C">Traps filled per photon absorbed while all are empty, at 20 °C; above 0, at most 1.</param>
/// <param name="ReachesMinutes">Last time of darkness that a reading told, min: slower rungs rest on the sheet and its smoothing.</param>
public sealed record MeasuredTraps(
    ImmutableArray<double> PerG,
    double TrappingEfficiencyAt20C,
    double ReachesMinutes
)
{
    /// <summary>Number of rungs.</summary>
    public const int RungCount = 13;

    /// <summary>Time of darkness whose rung stays as it is while the ladder leans, min; null where that is not kept.</summary>
    public double? MiddleMinutes { get; init; }

    /// <summary>
    /// Standard error of the lean, in decades by which the slowest rung is fuller than the middle one; null where it was not told.
    /// </summary>
    public double? LeanError { get; init; }

    /// <summary>Standard error of the trapping efficiency's logarithm; null where it was not told.</summary>
    public double? TrappingLogError { get; init; }
}
