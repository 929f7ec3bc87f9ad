using System.Collections.Immutable;

namespace GlowMix.Documents;

/// <summary>A list of values.</summary>
public sealed class ListNode : DocumentNode
{
    internal ListNode(ImmutableArray<DocumentNode> items, bool isFlow, Place place, SourceSpan span)
        : base(place, span) => (Items, IsFlow) = (items, isFlow);

    /// <summary>The values in order.</summary>
    public ImmutableArray<DocumentNode> Items { get; }

    /// <summary>Written on one line, in square brackets.</summary>
    public bool IsFlow { get; }

    internal override string What => "a list";
}
