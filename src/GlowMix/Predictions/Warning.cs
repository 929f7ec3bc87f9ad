namespace GlowMix.Predictions;

/// <summary>Something a reader should know before trusting a figure.</summary>
/// <param name="Code">A short stable word, for files and filters.</param>
/// <param name="Figure">The figure it touches most, or null.</param>
/// <param name="Text">One sentence for a person.</param>
public sealed record Warning(string Code, string? Figure, string Text);
