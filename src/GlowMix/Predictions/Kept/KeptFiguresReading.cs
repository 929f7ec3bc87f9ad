using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Predictions.Kept;

/// <summary>A figures file as it was read.</summary>
/// <param name="Kept">Null if there are problems.</param>
/// <param name="Problems">What is wrong with the text; empty if nothing is.</param>
public sealed record KeptFiguresReading(KeptFigures? Kept, ImmutableArray<Problem> Problems);
