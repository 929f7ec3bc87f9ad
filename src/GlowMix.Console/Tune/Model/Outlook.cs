using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Model;

/// <summary>What is foretold of one text of the recipe.</summary>
/// <param name="Text">The recipe's text: by it an answer is matched with what is on the screen.</param>
/// <param name="Prediction">Null if the piece cannot be predicted.</param>
/// <param name="Problems">Why not.</param>
/// <param name="HasBands">Low and high are worked out, too.</param>
/// <param name="IsRough">They are those of the few bounding runs, until those of the draws are there.</param>
internal sealed record Outlook(
    string Text,
    Prediction? Prediction,
    ImmutableArray<Problem> Problems,
    bool HasBands,
    bool IsRough = false
)
{
    /// <summary>0 likely figures, 1 rough bands, 2 bands.</summary>
    public int Completeness =>
        !HasBands ? 0
        : IsRough ? 1
        : 2;
}
