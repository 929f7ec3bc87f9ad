namespace GlowMix.Materials;

/// <summary>The file a material was read from.</summary>
/// <param name="Path">As shown to the user: the user's own path, or 'data/resins/….yaml' for what travels along.</param>
/// <param name="IsShipped">Travels with the program.</param>
/// <param name="Text">The whole text, to be hashed with the other inputs of a figure.</param>
public sealed record MaterialOrigin(string Path, bool IsShipped, string Text);
