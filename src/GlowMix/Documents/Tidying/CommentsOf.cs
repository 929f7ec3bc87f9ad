namespace GlowMix.Documents.Tidying;

/// <summary>Finds the comments of a document.</summary>
internal static class CommentsOf
{
    /// <summary>All comments, in order.</summary>
    public static IReadOnlyList<Comment> Document(Document document, TextLines lines)
    {
        string text = document.Text;
        var scalars = new List<SourceSpan>();
        Collect(document.Root!, scalars);
        scalars.Sort((a, b) => a.Start.CompareTo(b.Start));
        var comments = new List<Comment>();
        int next = 0;
        int i = 0;
        while (i < text.Length)
        {
            // A '#' inside a value is the value's.
            while (next < scalars.Count && scalars[next].End <= i)
            {
                next++;
            }
            if (next < scalars.Count && scalars[next].Start <= i)
            {
                i = scalars[next].End;
                continue;
            }
            if (text[i] == '#' && (i == 0 || char.IsWhiteSpace(text[i - 1])))
            {
                int end = SourceText.EndOfLine(text, i);
                int line = lines.Of(i);
                comments.Add(
                    new(
                        i,
                        text[i..end].TrimEnd(),
                        line,
                        i - lines.StartOf(line),
                        text.AsSpan(lines.StartOf(line), i - lines.StartOf(line)).IsWhiteSpace(),
                        lines.IsBlankAbove(line)
                    )
                );
                i = end;
                continue;
            }
            i++;
        }
        return comments;
    }

    private static void Collect(DocumentNode node, List<SourceSpan> scalars)
    {
        switch (node)
        {
            case MappingNode mapping:
                foreach (var (key, value) in mapping.Entries)
                {
                    scalars.Add(key.Span);
                    Collect(value, scalars);
                }
                break;
            case ListNode list:
                foreach (var item in list.Items)
                {
                    Collect(item, scalars);
                }
                break;
            case ScalarNode { Span.Length: > 0 }:
                scalars.Add(node.Span);
                break;
        }
    }
}
