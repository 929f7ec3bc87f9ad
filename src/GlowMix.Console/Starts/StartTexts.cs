using GlowMix.Documents;

namespace GlowMix.Console.Starts;

/// <summary>Texts for a new file, or why there is none.</summary>
/// <param name="Texts">In the order in which to try them.</param>
/// <param name="Problems">Of a file that an answer names; with an error among them there is no text.</param>
internal sealed record StartTexts(IReadOnlyList<string> Texts, IReadOnlyList<Problem> Problems)
{
    public static StartTexts Of(string text) => new([text], []);
}
