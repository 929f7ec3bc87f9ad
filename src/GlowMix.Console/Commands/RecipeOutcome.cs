using GlowMix.Documents;
using GlowMix.Predictions;

namespace GlowMix.Console.Commands;

/// <summary>What became of one recipe file.</summary>
/// <param name="Prediction">Null exactly if an error is among the problems.</param>
/// <param name="Problems">Errors and warnings of the recipe and the files it names.</param>
internal sealed record RecipeOutcome(Prediction? Prediction, IReadOnlyList<Problem> Problems);
