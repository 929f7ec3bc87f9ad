using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Predictions;

/// <summary>The charge in words.</summary>
internal static class ChargeWords
{
    public static string Of(Piece piece) =>
        string.Join(", then ", piece.Steps.Select(s => s.Words))
        + (piece.Start == ChargeStart.SettledDaily ? ", the same every day" : ", from empty traps");
}
