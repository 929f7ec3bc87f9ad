using GlowMix.Spectra;

namespace GlowMix.Readings.Fit;

/// <summary>A lit reading over the bare one.</summary>
internal sealed class LitBlock : FitBlock
{
    private const double MostNoise = 0.3;

    private readonly FitState state;

    private readonly bool isMean;

    private LitBlock(FitState state, int[] samples, double[] ownDeviations, bool isMean) =>
        (this.state, Samples, OwnDeviations, this.isMean) = (state, samples, ownDeviations, isMean);

    /// <summary>Samples of the model's grid that were read.</summary>
    public int[] Samples { get; }

    /// <summary>Standard deviations that are this reading's alone; the bare reading's are shared by all.</summary>
    public double[] OwnDeviations { get; }

    /// <inheritdoc/>
    public override double Freedom => Samples.Length - 1;

    /// <param name="reading">The lit reading.</param>
    /// <param name="bare">The bare one.</param>
    /// <param name="bareDeviations">Relative noise of the bare one at each sample.</param>
    /// <param name="state">The piece that was read.</param>
    /// <returns>Null where bare and lit reading have no light in common.</returns>
    public static LitBlock? Of(
        LitReading reading,
        TabulatedSpectrum bare,
        double[] bareDeviations,
        FitState state
    )
    {
        var lit = ResampledSpectrum.From(reading.Table).Spectrum;
        var noise = ReadingNoise.Of(reading.Table);
        var (all, allLogs) = LogRatio.Of(reading.Table, bare, out bool isMean);
        int[] places =
        [
            .. Enumerable
                .Range(0, all.Length)
                .Where(p =>
                    bareDeviations[all[p]] < MostNoise && noise.RelativeAt(all[p], lit[all[p]]) < MostNoise
                ),
        ];
        int[] samples = [.. places.Select(p => all[p])];
        double[] own =
        [
            .. samples.Select(i => Together(noise.RelativeAt(i, lit[i]), ReadingNoise.ModelShare)),
        ];
        return samples.Length < 2
            ? null
            : new(state, samples, own, isMean)
            {
                Name = reading.Name,
                State = reading.State,
                At = [.. samples.Select(i => (double)WavelengthGrid.NmAt(i))],
                LogRead = [.. places.Select(p => allLogs[p])],
                Deviations = [.. samples.Select((s, i) => Together(own[i], bareDeviations[s]))],
            };
    }

    /// <summary>Relative noise of a bare reading at each sample of the model's grid; infinite where there is no light.</summary>
    public static double[] DeviationsOf(TabulatedSpectrum bare)
    {
        var spectrum = ResampledSpectrum.From(bare).Spectrum;
        var noise = ReadingNoise.Of(bare);
        return
        [
            .. Enumerable
                .Range(0, WavelengthGrid.Count)
                .Select(i => spectrum[i] > 0 ? noise.RelativeAt(i, spectrum[i]) : double.PositiveInfinity),
        ];
    }

    /// <inheritdoc/>
    public override double[] LogPredicted(FitDraft draft)
    {
        double[] ratios = state.LogRatios(draft);
        ratios = isMean ? LogRatio.Means(ratios) : ratios;
        return [.. Samples.Select(i => ratios[i])];
    }

    /// <inheritdoc/>
    public override double[] Residuals(FitDraft draft)
    {
        double[] off = [.. LogRead.Zip(LogPredicted(draft), (read, model) => read - model)];
        double along = 0;
        double length = 0;
        for (int i = 0; i < off.Length; i++)
        {
            double weight = 1 / (Deviations[i] * Deviations[i]);
            along += weight * off[i];
            length += weight;
        }
        return [.. off.Select(r => r - (along / length))];
    }

    private static double Together(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
