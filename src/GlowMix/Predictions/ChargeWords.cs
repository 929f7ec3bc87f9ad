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
        double? needed = figures["afterglow.charge_minutes_to_90_percent"];
        if (needed > last.Minutes)
        {
            return Say(
                $"the charge: {last.Words}; {needed:0.#} min of that light from its start would bring 90 % of what it can"
            );
        }
        if (bottom == 0 && surface > 0)
        {
            return Say(
                $"reach: pigment between the packages counts as not lit by them, and no other light charges it; above it {most:0} % of the traps are filled"
            );
        }
        if (least < most / 2)
        {
            return Say(
                $"shade: of the traps {most:0} % are filled where it is bright and {least:0} % where it is darkest"
            );
        }
        return most < 50
            ? Say(
                $"the light's strength: longer brings little more, and {filled:0} % of the traps are filled"
            )
            : Say($"the amount of pigment: {filled:0} % of its traps are filled");
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
