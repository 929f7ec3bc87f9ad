namespace GlowMix.Documents;

/// <summary>A stretch of a text and what to write in its place; an empty stretch inserts.</summary>
public readonly record struct TextEdit(SourceSpan Span, string NewText);
