namespace GlowMix.Predictions;

/// <summary>A number without a source that moves the figures, in the order in which to calibrate.</summary>
/// <param name="What">What it is, in words: 'grain absorption of green-aluminate'.</param>
/// <param name="Text">Its value, its doubt, and the reading that would settle it.</param>
public sealed record Assumption(string What, string Text);
