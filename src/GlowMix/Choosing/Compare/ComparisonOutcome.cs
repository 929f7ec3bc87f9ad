using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Choosing.Compare;

/// <summary>A comparison, or the reasons why there is none.</summary>
/// <param name="Comparison">Null if there are errors.</param>
/// <param name="Problems">Errors and warnings of both recipes and their files, each once.</param>
public sealed record ComparisonOutcome(Comparison? Comparison, ImmutableArray<Problem> Problems);
