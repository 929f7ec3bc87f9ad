using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Pieces;

namespace GlowMix.Choosing.Draws;

/// <summary>A piece of one draw, ready for the model.</summary>
/// <param name="Piece">All its numbers as drawn.</param>
/// <param name="Optics">Of its materials.</param>
/// <param name="Pigments">What each pigment was drawn from, and the pigment in the piece.</param>
internal sealed record DrawnPiece(
    Piece Piece,
    DrawnOptics Optics,
    ImmutableArray<(PigmentDraft Draft, Pigment Pigment)> Pigments
);
