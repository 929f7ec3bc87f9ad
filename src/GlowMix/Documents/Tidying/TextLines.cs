namespace GlowMix.Documents.Tidying;

/// <summary>The lines of a text, counted from 0.</summary>
internal sealed class TextLines
{
    private readonly string text;
    private readonly List<int> starts = [0];

    public TextLines(string text)
    {
        this.text = text;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }
    }

    /// <summary>The line a character lies in.</summary>
    public int Of(int index)
    {
        int found = starts.BinarySearch(index);
        return found >= 0 ? found : ~found - 1;
    }

    /// <summary>Index of a line's first character.</summary>
    public int StartOf(int line) => starts[line];

    /// <summary>The line above is there and empty.</summary>
    public bool IsBlankAbove(int line) =>
        line > 0 && text.AsSpan(starts[line - 1], starts[line] - starts[line - 1]).IsWhiteSpace();
}
