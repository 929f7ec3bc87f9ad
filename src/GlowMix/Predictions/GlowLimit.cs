using System.Globalization;
using GlowMix.Pieces;

namespace GlowMix.Predictions;

/// <summary>What holds a piece's glow back most.</summary>
internal static class GlowLimit
{
    // A gain smaller than this is not worth a maker's trouble.
    private const double WorthAFactor = 1.25;

    /// <summary>One reason in a few words, the heaviest; null without pigment.</summary>
    /// <remarks>
    /// Too short a charge comes first, since it is mended for nothing. Else each lack is weighed by the factor of filled traps
    /// that would be won without it: as much light everywhere as where it is brightest, stronger light there. If none is worth
    /// the trouble, only more pigment helps.
    /// </remarks>
    public static string? InWords(Piece piece, PieceGlow? glow)
    {
        if (glow is null)
        {
            return null;
        }
        double filled = glow.CapacityFilledPercent;
        var last = piece.Steps.LastOrDefault(s => s.IsLit);
        if (last is null || filled <= 0)
        {
            return "no light reaches the pigment";
        }
        if (glow.ChargeMinutesTo90Percent is double needed && needed > last.Minutes)
        {
            return Say($"the charge of {last.Words}; {TwoDigits(needed)} min would bring 90 % of all it can");
        }
        TrapFilling[] all = [.. glow.Fillings];
        double most = all.Max(f => f.FilledPercent);
        double least = all.Min(f => f.FilledPercent);
        double shade = most / filled;
        double weakness = all.Max(f => f.MostFilledPercent) / most;
        return Math.Max(shade, weakness) <= WorthAFactor
                ? Say($"the amount of pigment; {filled:0} % of its traps are filled")
            : shade >= weakness
                ? Say(
                    $"shade; {most:0} % of the traps are filled where it is brightest, {least:0} % where it is darkest"
                )
            : Say(
                $"the light's strength; {filled:0} % of the traps are filled, and longer would bring little more"
            );
    }

    private static string TwoDigits(double minutes)
    {
        double step = Math.Pow(10, Math.Floor(Math.Log10(minutes)) - 1);
        return (Math.Round(minutes / step) * step).ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
