using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Console.Commands;

/// <summary>A recipe's prediction with the piece behind it and who predicted it.</summary>
internal sealed record PredictedPiece(Prediction Prediction, Piece Piece, Predictor Predictor);
