namespace GlowMix.Materials;

/// <summary>One entry of a material's file with its source, for lists.</summary>
/// <param name="Key">The key path, such as 'return_matrix' or 'charge.minutes'.</param>
/// <param name="Value">The value as written; 'table' for one.</param>
/// <param name="Note">Where it comes from.</param>
/// <param name="Doubt">How far off it may be.</param>
public sealed record MaterialFact(string Key, string Value, SourceNote Note, Doubt Doubt);
