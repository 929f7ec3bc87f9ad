namespace GlowMix.Predictions;

/// <summary>The least and the greatest of the bounding runs.</summary>
internal static class Bounds
{
    private const int CurvePoints = 97;
    private const double FirstMinutes = 0.5;
    private const double LastMinutes = 1440;

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
        var minutes = new double[CurvePoints];
        var low = new double[CurvePoints];
        var middle = new double[CurvePoints];
        var high = new double[CurvePoints];
        for (int i = 0; i < CurvePoints; i++)
        {
            minutes[i] = FirstMinutes * Math.Pow(LastMinutes / FirstMinutes, i / (CurvePoints - 1.0));
            double[] all = [.. runs.Select(r => r.Glow!.Photopic.LuminanceMcdM2(minutes[i]))];
            low[i] = all.Min();
            middle[i] = likely.Glow.Photopic.LuminanceMcdM2(minutes[i]);
            high[i] = all.Max();
        }
        return new(minutes, low, middle, high);
    }
}
