using GlowMix.Colour;
using GlowMix.Pieces;

namespace GlowMix.Predictions;

/// <summary>A pour that runs out of level, at its shallow end, where it is as deep as stated, and at its deep end.</summary>
internal static class AlongPour
{
    /// <summary>The piece with its top layer so much deeper.</summary>
    public static Piece Deeper(Piece piece, double byMm)
    {
        var top = piece.Layers[^1];
        return piece with
        {
            Layers = piece.Layers.SetItem(piece.Layers.Length - 1, top with { DepthMm = top.DepthMm + byMm }),
        };
    }

    /// <summary>The places, and the largest colour step between two of them; nothing where the pour is level.</summary>
    /// <param name="likely">The likely run, of the depth at mid-length.</param>
    /// <param name="runOf">The likely run of a piece of another depth.</param>
    public static (IReadOnlyList<AlongPlace> Places, double? LargestStepUPrimeVPrime) Of(
        Run likely,
        Func<Piece, Run> runOf
    )
    {
        var piece = likely.Light.Piece;
        if (piece.Recipe.Pour.RunsOutMm is not double runsOutMm || runsOutMm == 0)
        {
            return ([], null);
        }
        var shallow = runOf(Deeper(piece, -runsOutMm / 2));
        var deep = runOf(Deeper(piece, runsOutMm / 2));
        return (
            [PlaceOf("shallow", shallow), PlaceOf("nominal", likely), PlaceOf("deep", deep)],
            LargestStep([shallow, likely, deep])
        );
    }

    private static AlongPlace PlaceOf(string name, Run run) =>
        new(
            name,
            run.Light.Piece.DepthMm,
            run.Figures["lit.cct_k"],
            run.Figures["lit.duv"],
            run.Figures["lit.flux_lm"],
            run.Figures["afterglow.luminance_mcd_m2", 10]
        )
        {
            Chromaticity = ColourPoint.Of(run.Light.LitWPerNm).Chromaticity,
        };

    private static double? LargestStep(Run[] runs)
    {
        var points = Array.ConvertAll(runs, r => ColourPoint.Of(r.Light.LitWPerNm).Chromaticity);
        double? largest = null;
        for (int i = 0; i < points.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (points[i] is { } one && points[j] is { } other)
                {
                    largest = Math.Max(largest ?? 0, ColourDifference.UPrimeVPrime(one, other));
                }
            }
        }
        return largest;
    }
}
