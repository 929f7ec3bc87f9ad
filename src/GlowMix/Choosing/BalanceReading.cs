using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Choosing;

/// <summary>A search that can run, or the reasons why it cannot.</summary>
/// <param name="Balance">Null if there are errors.</param>
/// <param name="Problems">Errors, and warnings about what the files say.</param>
public sealed record BalanceReading(Balance? Balance, ImmutableArray<Problem> Problems);
