namespace GlowMix.Documents;

/// <summary>One key with its value.</summary>
public sealed record MappingEntry(ScalarNode Key, DocumentNode Value);
