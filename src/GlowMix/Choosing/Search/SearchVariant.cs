using System.Collections.Immutable;
using GlowMix.Pieces;

namespace GlowMix.Choosing.Search;

/// <summary>One combination of the values that a recipe lists under 'any_of'.</summary>
/// <param name="Values">A value for each such key, in the order of the choices, as the recipe writes it.</param>
/// <param name="Piece">The piece with these values, and the recipe's own numbers on the axes.</param>
internal sealed record SearchVariant(ImmutableArray<string> Values, Piece Piece);
