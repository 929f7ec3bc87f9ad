using System.Globalization;
using GlowMix.Casting;
using GlowMix.Pieces;

namespace GlowMix.Predictions;

/// <summary>What grains that settle do, said plainly.</summary>
internal static class SettledWarnings
{
    private const string Glow = "afterglow.luminance_mcd_m2[10]";

    public static void Add(Piece piece, CastingPlan plan, Action<string, string?, FormattableString> say)
    {
        bool severalSettle = plan.Layers.Count(l => l.Settles) > 1;
        for (int i = 0; i < plan.Layers.Length; i++)
        {
            var batch = plan.Layers[i];
            if (!batch.Settles)
            {
                continue;
            }
            string grains = severalSettle ? $"grains in '{batch.Layer.Name}'" : "grains";
            if (!piece.IsSettled)
            {
                say(
                    "evenly-spread",
                    Glow,
                    $"{grains} settle {Millimetres(batch.SettledMm)} mm, which is left out; they are taken as evenly spread"
                );
                continue;
            }
            double bedMm = batch.Settled()!.BedMm;
            say(
                "settled",
                Glow,
                $"{grains} settle {Millimetres(batch.SettledMm)} mm, a bed of {Millimetres(bedMm)} mm lies {PlaceOf(piece, i)} (face {(piece.IsFaceUp ? "up" : "down")}); in it they fill {100 * batch.Layer.Pigment!.Packing.BedFraction:0} % of the volume and no longer scatter one by one, as assumed"
            );
        }
    }

    private static string PlaceOf(Piece piece, int layer)
    {
        int beyond = piece.IsFaceUp ? layer - 1 : layer + 1;
        if (beyond < 0)
        {
            return "on the board";
        }
        return beyond == piece.Layers.Length
            ? "at the viewing face"
            : $"against the layer '{piece.Layers[beyond].Name}'";
    }

    private static string Millimetres(double mm) =>
        mm.ToString(mm < 0.1 ? "0.00" : "0.0", CultureInfo.InvariantCulture);
}
