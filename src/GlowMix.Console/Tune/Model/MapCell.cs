namespace GlowMix.Console.Tune.Model;

/// <summary>One point of the map.</summary>
/// <param name="MissedCount">Targets it misses, by the likely figures; null where it cannot be poured or predicted.</param>
/// <param name="CctK">Its white, K.</param>
/// <param name="FluxKeptPercent">Its light, of the bare board's.</param>
/// <param name="GlowMcdPerM2">Its glow when it counts.</param>
/// <param name="Missed">What it misses, in words.</param>
internal sealed record MapCell(
    int? MissedCount,
    double? CctK,
    double? FluxKeptPercent,
    double? GlowMcdPerM2,
    string Missed
);
