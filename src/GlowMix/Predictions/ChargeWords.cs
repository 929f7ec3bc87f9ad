using System.Globalization;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Predictions;

/// <summary>The charge in words, and what holds the glow back.</summary>
internal static class ChargeWords
{
    public static string Of(Piece piece) =>
        string.Join(", then ", piece.Steps.Select(s => s.Words))
        + (piece.Start == ChargeStart.SettledDaily ? ", the same every day" : ", from empty traps");

    /// <summary>One reason, the heaviest; null without pigment.</summary>
    public static string? LimitedBy(Piece piece, FigureValues figures)
    {
        if (!piece.HasPigment)
        {
            return null;
        }
        double filled = figures["afterglow.capacity_filled_percent"] ?? 0;
        double bottom = figures["afterglow.capacity_filled_bottom_percent"] ?? 0;
        double surface = figures["afterglow.capacity_filled_surface_percent"] ?? 0;
        double least = Math.Min(bottom, surface);
        double most = Math.Max(bottom, surface);
        var last = piece.Steps.LastOrDefault(s => s.IsLit);
        if (last is null || filled <= 0)
        {
            return "no light reaches the pigment";
        }
        if (figures["afterglow.charge_minutes_to_90_percent"] is double needed && needed > last.Minutes)
        {
            return Say($"the charge of {last.Words}; {TwoDigits(needed)} min would bring 90 % of all it can");
        }
        if (bottom == 0 && surface > 0)
        {
            return Say(
                $"reach, for no light is counted between the packages; above them {most:0} % of the traps are filled"
            );
        }
        // What stronger light could fill even where it is brightest, against what light to the darkest place could.
        double byStrength = 100 / most;
        double byShade = most / filled;
        if (least < most / 2 && byShade > byStrength)
        {
            return Say(
                $"shade; of the traps {most:0} % are filled where it is brightest, {least:0} % where it is darkest"
            );
        }
        return most < 50
            ? Say(
                $"the light's strength; {filled:0} % of the traps are filled, and longer would bring little more"
            )
            : Say($"the amount of pigment; {filled:0} % of its traps are filled");
    }

    private static string TwoDigits(double minutes)
    {
        double step = Math.Pow(10, Math.Floor(Math.Log10(minutes)) - 1);
        return (Math.Round(minutes / step) * step).ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
