using GlowMix.Documents.Shapes;

namespace GlowMix.Documents.Tidying;

/// <summary>
/// A text in canonical order, spacing and number style. Comments stay with their lines, and what the text means stays the same;
/// tidying twice is tidying once.
/// </summary>
/// <remarks>
/// Keys stand in the order of the shape, two blanks further in than what they belong to, one value a line: brackets are opened.
/// A comment on a line of its own goes with the key below it, with the one above where a blank line follows it; one behind a
/// value keeps its column as long as there is room. Quotes, empty lines between keys and the order of lists stay; several empty
/// lines become one.
/// </remarks>
public static class TidyText
{
    /// <summary>The tidy text.</summary>
    /// <param name="document">A document that was read without problems.</param>
    /// <param name="shape">What the file is.</param>
    /// <returns>Null where it cannot be done without a loss, as with a text block whose empty last lines count.</returns>
    public static string? Of(Document document, Shape shape)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Root is null)
        {
            return null;
        }
        var lines = new TextLines(document.Text);
        var comments = CommentsOf.Document(document, lines);
        string tidy = new TidyWriter(document, lines, comments).Write(shape);
        var again = Document.Read(tidy, document.Name);
        return
            again.Root is not null
            && SameMeaning.Of(document.Root, again.Root)
            && Sorted(comments).SequenceEqual(Sorted(CommentsOf.Document(again, new TextLines(tidy))))
            ? tidy
            : null;
    }

    private static IEnumerable<string> Sorted(IReadOnlyList<Comment> comments) =>
        comments.Select(c => c.Text).Order(StringComparer.Ordinal);
}
