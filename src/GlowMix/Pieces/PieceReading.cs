using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Pieces;

/// <summary>A piece, or the reasons why there is none.</summary>
/// <param name="Piece">Null if there are errors.</param>
/// <param name="Problems">Errors and warnings: of the recipe first, then of the material files it names.</param>
public sealed record PieceReading(Piece? Piece, ImmutableArray<Problem> Problems);
