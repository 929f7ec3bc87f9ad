namespace GlowMix.Documents;

/// <summary>One value: a number, a word or a text, not yet interpreted.</summary>
public sealed class ScalarNode : DocumentNode
{
    internal ScalarNode(string value, bool isPlain, Place place, SourceSpan span)
        : base(place, span) => (Value, IsPlain) = (value, isPlain);

    /// <summary>The text, quotes and escapes resolved.</summary>
    public string Value { get; }

    /// <summary>Written without quotes, on the key's own terms; only then it can be a number.</summary>
    public bool IsPlain { get; }

    /// <summary>Nothing is written (or the sign for nothing, '~').</summary>
    public bool IsEmpty => IsPlain && Value is "" or "~";

    internal override string What => IsEmpty ? "nothing" : "one value";
}
