namespace GlowMix.Choosing.Draws;

/// <summary>A number of a piece that may turn out otherwise.</summary>
/// <param name="Cause">What it belongs to.</param>
/// <param name="Spread">How it may turn out.</param>
/// <param name="Put">Puts a value into a draft of the piece.</param>
/// <param name="Key">The name under which a calibration knows it; null where none does.</param>
internal sealed record DoubtfulNumber(
    Cause Cause,
    Spread Spread,
    Action<PieceDraft, double> Put,
    string? Key = null
);
