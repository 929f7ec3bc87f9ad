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
            string ofLayer = severalSettle ? $" of '{batch.Layer.Name}'" : "";
            string fallMm = Millimetres(batch.SettledMm);
            if (!piece.IsSettled)
            {
                say(
                    "evenly-spread",
                    Glow,
                    $"settling{ofLayer} is left out; grains would fall {fallMm} mm, and are taken as evenly spread"
                );
                continue;
            }
            var bed = (Mm: Millimetres(batch.Settled()!.BedMm), Place: PlaceOf(piece, i));
            say(
                "settled",
                Glow,
                $"a bed of {bed.Mm} mm{ofLayer} settles {bed.Place} (face {(piece.IsFaceUp ? "up" : "down")}); grains fall {fallMm} mm, and in the bed fill {100 * batch.Layer.Pigment!.Packing.BedFraction:0} % of the volume, where they no longer scatter one by one, as assumed"
            );
        }
    }

    private static string PlaceOf(Piece piece, int layer)
    {
        if (piece.IsFaceUp)
        {
            return layer == 0 ? "on the board" : $"on '{piece.Layers[layer - 1].Name}'";
        }
        return layer == piece.Layers.Length - 1
            ? "at the viewing face"
            : $"against '{piece.Layers[layer + 1].Name}'";
    }

    private static string Millimetres(double mm) =>
        mm.ToString(mm < 0.1 ? "0.00" : "0.0", CultureInfo.InvariantCulture);
}
