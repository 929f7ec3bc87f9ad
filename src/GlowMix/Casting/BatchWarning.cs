namespace GlowMix.Casting;

/// <summary>Something that can spoil a batch.</summary>
/// <param name="Code">A short stable word, for files and filters.</param>
/// <param name="Layer">The layer it is about; null for the whole batch.</param>
/// <param name="Text">One sentence for a person.</param>
public sealed record BatchWarning(string Code, string? Layer, string Text);
