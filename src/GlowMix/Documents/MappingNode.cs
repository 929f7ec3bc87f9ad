using System.Collections.Immutable;

namespace GlowMix.Documents;

/// <summary>Keys with values, in the order they are written; no key stands twice.</summary>
public sealed class MappingNode : DocumentNode
{
    internal MappingNode(ImmutableArray<MappingEntry> entries, bool isFlow, Place place, SourceSpan span)
        : base(place, span) => (Entries, IsFlow) = (entries, isFlow);

    /// <summary>Keys and values.</summary>
    public ImmutableArray<MappingEntry> Entries { get; }

    /// <summary>Written on one line, in curly brackets.</summary>
    public bool IsFlow { get; }

    /// <summary>The value of a key, or null if the key is not there.</summary>
    public DocumentNode? this[string key] => Find(key)?.Value;

    /// <summary>The entry of a key, or null.</summary>
    public MappingEntry? Find(string key)
    {
        foreach (var entry in Entries)
        {
            if (entry.Key.Value == key)
            {
                return entry;
            }
        }
        return null;
    }

    internal override string What => "keys with values";
}
