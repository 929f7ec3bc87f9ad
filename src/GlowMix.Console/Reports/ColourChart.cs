using GlowMix.Colour;
using GlowMix.Console.Plots;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Reports;

/// <summary>The whites and the glow in the CIE 1976 diagram, with the whites of glowing bodies.</summary>
internal static class ColourChart
{
    private const double Margin = 0.03;
    private const double LocusFromK = 1800;
    private const double LocusToK = 20_000;
    private const int LocusPoints = 60;

    private static readonly double[] namedK = [2700, 4000, 6500];

    /// <summary>Null where no light comes out.</summary>
    public static Illustration? Of(Prediction prediction)
    {
        var figures = prediction.Figures;
        List<(string Name, Chromaticity Point, string Shape, string Looks)> points = [];
        Add("bare", "ring", "bare", figures["bare.x"], figures["bare.y"]);
        Add("potted", "dot", "lit", figures["lit.x"], figures["lit.y"]);
        Add("glow", "diamond", "glow", figures["afterglow.x"], figures["afterglow.y"]);
        if (points.Count < 2)
        {
            return null;
        }
        var whites = namedK.Select(PlanckianLocus.AtK).ToArray();
        var all = points.Select(p => p.Point).Concat(whites).ToArray();
        var chart = new Chart(
            Axis.Linear("u′", all.Min(p => p.UPrime) - Margin, all.Max(p => p.UPrime) + Margin),
            Axis.Linear("v′", all.Min(p => p.VPrime) - Margin, all.Max(p => p.VPrime) + Margin)
        );
        var locus = Enumerable
            .Range(0, LocusPoints)
            .Select(i =>
                PlanckianLocus.AtK(LocusToK * Math.Pow(LocusFromK / LocusToK, i / (LocusPoints - 1.0)))
            )
            .ToArray();
        chart.Curve([.. locus.Select(p => p.UPrime)], [.. locus.Select(p => p.VPrime)], "locus");
        for (int i = 0; i < whites.Length; i++)
        {
            chart.Mark(
                whites[i].UPrime,
                whites[i].VPrime,
                "ring",
                $"{Digits.Plain(namedK[i])} K",
                "locus",
                below: true
            );
        }
        foreach (var (name, point, shape, looks) in points)
        {
            chart.Mark(
                point.UPrime,
                point.VPrime,
                shape,
                name,
                looks,
                below: shape == "ring",
                left: shape != "dot"
            );
        }
        return new(
            chart.Drawn(
                "Colours",
                string.Join(
                    "; ",
                    points.Select(p =>
                        $"{p.Name} at u′ {Digits.Fixed(p.Point.UPrime, 4)}, v′ {Digits.Fixed(p.Point.VPrime, 4)}"
                    )
                )
            ),
            "Colours in the CIE 1976 diagram; the line is the whites of glowing bodies. Above it looks greenish, below pinkish.",
            ["", "u′", "v′", "Duv"],
            [
                .. points.Select(p =>
                    new[]
                    {
                        p.Name,
                        Digits.Fixed(p.Point.UPrime, 4),
                        Digits.Fixed(p.Point.VPrime, 4),
                        p.Name == "glow"
                            ? ""
                            : Digits.Duv(figures[p.Name == "bare" ? "bare.duv" : "lit.duv"]),
                    }
                ),
            ]
        );

        void Add(string name, string shape, string looks, double? x, double? y)
        {
            if (x is double atX && y is double atY)
            {
                points.Add((name, Chromaticity.FromXy(atX, atY), shape, looks));
            }
        }
    }
}
