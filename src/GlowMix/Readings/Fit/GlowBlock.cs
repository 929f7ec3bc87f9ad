namespace GlowMix.Readings.Fit;

/// <summary>A decay.</summary>
/// <remarks>
/// Where its level is not known, the one that fits best is taken out of what was read and of what is predicted before they are
/// compared: the same sum of squares as fitting the level too (variable projection, Golub &amp; Pereyra 1973).
/// </remarks>
internal sealed class GlowBlock : FitBlock
{
    private readonly FitState state;
    private readonly double middleMinutes;
    private readonly bool isRelative;

    private GlowBlock(FitState state, double middleMinutes, bool isRelative) =>
        (this.state, this.middleMinutes, this.isRelative) = (state, middleMinutes, isRelative);

    /// <inheritdoc/>
    public override double Freedom => LogRead.Length - (isRelative ? 1 : 0);

    /// <param name="reading">The decay.</param>
    /// <param name="state">The piece it was read of.</param>
    /// <param name="middleMinutes">Time whose rung the tilt of the ladder leaves alone, min.</param>
    public static GlowBlock Of(GlowReading reading, FitState state, double middleMinutes)
    {
        // A step of the display hides an even spread of its own width.
        double stepDeviation = reading.DisplayStep / Math.Sqrt(12);
        double relative = reading.NoisePercent / 100;
        return new(state, middleMinutes, reading.IsRelative)
        {
            Name = reading.Name,
            State = reading.State,
            At = [.. reading.Points.Select(p => p.Minutes)],
            LogRead = [.. reading.Points.Select(p => Math.Log(p.LuminanceMcdM2))],
            Deviations =
            [
                .. reading.Points.Select(p =>
                    Math.Sqrt(
                        (relative * relative)
                            + (stepDeviation * stepDeviation / (p.LuminanceMcdM2 * p.LuminanceMcdM2))
                            + (ReadingNoise.ModelShare * ReadingNoise.ModelShare)
                    )
                ),
            ],
        };
    }

    /// <inheritdoc/>
    public override double[] LogPredicted(FitDraft draft) => state.LogLuminances(draft, At, middleMinutes);

    /// <inheritdoc/>
    public override double[] Residuals(FitDraft draft) =>
        [.. AtBestLevel([.. LogRead.Zip(LogPredicted(draft), (read, model) => read - model)])];

    /// <summary>Logarithms in units of their noise.</summary>
    public IEnumerable<double> Whitened(double[] logs) =>
        AtBestLevel(logs).Select((v, i) => v / Deviations[i]);

    private IEnumerable<double> AtBestLevel(double[] logs)
    {
        if (!isRelative)
        {
            return logs;
        }
        double[] weights = [.. Deviations.Select(d => 1 / (d * d))];
        double level = logs.Zip(weights, (v, w) => v * w).Sum() / weights.Sum();
        return logs.Select(v => v - level);
    }
}
