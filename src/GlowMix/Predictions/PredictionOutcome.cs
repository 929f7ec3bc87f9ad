using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Predictions;

/// <summary>A prediction, or the reasons why there is none.</summary>
/// <param name="Prediction">Null if there are errors.</param>
/// <param name="Problems">Errors, and warnings about what the files say.</param>
public sealed record PredictionOutcome(Prediction? Prediction, ImmutableArray<Problem> Problems);
