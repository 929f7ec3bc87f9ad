using GlowMix.Casting;
using GlowMix.Markings;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Predictions.Kept;

namespace GlowMix.Console.Reports;

/// <summary>All that a report tells of one recipe.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Prediction">What is foretold of it.</param>
/// <param name="Batch">What to weigh for one.</param>
/// <param name="Markings">Its glow beside the criteria that the recipe names.</param>
/// <param name="KnownCriteria">Names of all criteria there are.</param>
/// <param name="Inputs">What it was worked out from.</param>
internal sealed record RecipeReport(
    Piece Piece,
    Prediction Prediction,
    BatchSheet Batch,
    MarkingGuidance Markings,
    IReadOnlyList<string> KnownCriteria,
    IReadOnlyList<PredictionInput> Inputs
)
{
    /// <summary>What it is called: the recipe's title, else its file.</summary>
    public string Name => Prediction.Title.Length > 0 ? Prediction.Title : Prediction.Recipe;

    /// <summary>Its materials in the order in which light meets them, each once.</summary>
    public IReadOnlyList<Material> Materials =>
        [
            .. new Material?[] { Piece.Led, Piece.Board, Piece.Resin }
                .Concat(Piece.Layers.Select(l => l.Pigment))
                .Concat(Piece.Steps.Select(s => s.Lamp))
                .OfType<Material>()
                .DistinctBy(m => (m.GetType(), m.Name)),
        ];
}
