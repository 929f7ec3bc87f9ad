namespace GlowMix.Readings.Fit;

/// <summary>A decay.</summary>
internal sealed class GlowBlock : FitBlock
{
    private readonly FitState state;
    private readonly double middleMinutes;

    private GlowBlock(FitState state, double middleMinutes) =>
        (this.state, this.middleMinutes) = (state, middleMinutes);

    /// <inheritdoc/>
    public override double Freedom => LogRead.Length;

    /// <param name="reading">The decay.</param>
    /// <param name="state">The piece it was read of.</param>
    /// <param name="middleMinutes">Time whose rung the tilt of the ladder leaves alone, min.</param>
    public static GlowBlock Of(GlowReading reading, FitState state, double middleMinutes)
    {
        // A step of the display hides an even spread of its own width.
        double stepDeviation = reading.StepMcdPerM2 / Math.Sqrt(12);
        double relative = reading.NoisePercent / 100;
        return new(state, middleMinutes)
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
        [.. LogRead.Zip(LogPredicted(draft), (read, model) => read - model)];

    /// <summary>Logarithms in units of their noise.</summary>
    public IEnumerable<double> Whitened(double[] logs) => logs.Select((v, i) => v / Deviations[i]);
}
