using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>A range of the command line: '350-390'.</summary>
internal static class RangeWord
{
    /// <summary>The two ends, the first not above the last; null where the word is none.</summary>
    public static (double First, double Last)? Read(string word)
    {
        int hyphen = word.IndexOfAny(['-', '–'], Math.Min(1, word.Length));
        return
            hyphen > 0
            && NumberText.TryRead(word[..hyphen].Trim(), out double first)
            && NumberText.TryRead(word[(hyphen + 1)..].Trim(), out double last)
            && first >= 0
            && first <= last
            ? (first, last)
            : null;
    }
}
