namespace GlowMix.Predictions;

/// <summary>The least and the greatest of the bounding runs.</summary>
internal static class Bounds
{
    private const int CurvePoints = 97;
    private const double FirstMinutes = 0.5;
    private const double LastMinutes = 1440;

    /// <summary>Where a decay curve has its points, min, evenly spaced in the logarithm.</summary>
    public static IReadOnlyList<double> CurveMinutes { get; } =
    [
        .. Enumerable
            .Range(0, CurvePoints)
            .Select(i => FirstMinutes * Math.Pow(LastMinutes / FirstMinutes, i / (CurvePoints - 1.0))),
    ];

    /// <summary>Bands of tint and afterglow: every figure that the runs can move.</summary>
    public static IReadOnlyList<KeyValuePair<Figure, Band>> Of(
        IReadOnlyList<FigureValues> runs,
        FigureValues likely
    )
    {
        var bands = new List<KeyValuePair<Figure, Band>>();
        foreach (var figure in FigureCatalogue.All)
        {
            bool banded =
                figure.Name.StartsWith("lit.", StringComparison.Ordinal)
                || figure.Name.StartsWith("afterglow.", StringComparison.Ordinal);
            double low = double.PositiveInfinity;
            double high = double.NegativeInfinity;
            foreach (var run in runs)
            {
                if (run[figure] is double value)
                {
                    low = Math.Min(low, value);
                    high = Math.Max(high, value);
                }
            }
            if (banded && low <= high)
            {
                bands.Add(new(figure, new Band(low, likely[figure], high)));
            }
        }
        return bands;
    }

    /// <summary>Decay with its band; null without pigment.</summary>
    public static DecayCurve? DecayOf(IReadOnlyList<Run> runs, Run likely)
    {
        if (likely.Glow is null)
        {
            return null;
        }
        double[][] all = [.. runs.Select(r => LuminancesOf(r.Glow!))];
        return new(
            CurveMinutes,
            [.. CurveMinutes.Select((_, i) => all.Min(curve => curve[i]))],
            LuminancesOf(likely.Glow),
            [.. CurveMinutes.Select((_, i) => all.Max(curve => curve[i]))]
        );
    }

    /// <summary>Luminance at <see cref="CurveMinutes"/>, mcd/m².</summary>
    public static double[] LuminancesOf(PieceGlow glow) =>
        [.. CurveMinutes.Select(glow.Photopic.LuminanceMcdM2)];
}
