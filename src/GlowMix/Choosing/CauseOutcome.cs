using System.Collections.Immutable;
using GlowMix.Choosing.Draws;
using GlowMix.Documents;

namespace GlowMix.Choosing;

/// <summary>What makes a recipe's figures doubtful, or the reasons why there is no answer.</summary>
/// <param name="Study">Null if there are errors.</param>
/// <param name="Problems">Errors, and warnings about what the files say.</param>
public sealed record CauseOutcome(CauseStudy? Study, ImmutableArray<Problem> Problems);
