namespace GlowMix.Documents;

/// <summary>A stretch of a text: characters from <paramref name="Start"/> up to, not with, <paramref name="End"/>, from 0.</summary>
public readonly record struct SourceSpan(int Start, int End)
{
    /// <summary>Number of characters.</summary>
    public int Length => End - Start;
}
