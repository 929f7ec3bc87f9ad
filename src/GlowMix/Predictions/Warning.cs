namespace GlowMix.Predictions;

/// <summary>Something a reader should know before trusting a figure.</summary>
/// <param name="Code">A short stable word, for files and filters.</param>
/// <param name="Figure">The figure it touches most, or null.</param>
/// <param name="Text">
/// One sentence for a person. What stands before its first colon or semicolon says enough to one who has read it before.
/// </param>
public sealed record Warning(string Code, string? Figure, string Text)
{
    /// <summary>The text up to its first colon or semicolon.</summary>
    public string Brief
    {
        get
        {
            // A colon or semicolon of the sentence has a blank behind it; one in a name has none.
            for (int i = 0; i + 1 < Text.Length; i++)
            {
                if (Text[i] is ':' or ';' && Text[i + 1] == ' ')
                {
                    return Text[..i];
                }
            }
            return Text;
        }
    }
}
