namespace GlowMix.Documents;

/// <summary>A value in a document: a scalar, a list or a mapping, with where it stands.</summary>
public abstract class DocumentNode
{
    private protected DocumentNode(Place place, SourceSpan span) => (Place, Span) = (place, span);

    /// <summary>First character, as editors count.</summary>
    public Place Place { get; }

    /// <summary>The characters of the text it is written in, without trailing blanks and comments.</summary>
    public SourceSpan Span { get; }

    /// <summary>What it is, for messages: 'one value', 'a list', 'keys with values'.</summary>
    internal abstract string What { get; }
}
