namespace GlowMix.Readings.Spectral;

/// <summary>Takes off what an instrument shows without light. Negative noise is kept: cut to zero it would leave a pedestal.</summary>
public static class DarkReading
{
    private const int LeastSamples = 3;

    /// <summary>Takes off a second reading, made in the dark with the same exposure.</summary>
    public static ReadingStep Subtract(SpectralReading reading, SpectralReading dark)
    {
        if (reading.Unit != dark.Unit)
        {
            return ReadingStep.Refused(
                SpectralTexts.UnitsDiffer(
                    "the dark reading",
                    reading.Findings.LightUnit,
                    dark.Findings.LightUnit
                )
            );
        }
        if (OtherGrid.Of(reading.Spectrum, dark.Spectrum) is not var (table, values, isInterpolated))
        {
            return ReadingStep.Refused(
                SpectralTexts.NoOverlap("the dark reading", reading.Spectrum, dark.Spectrum)
            );
        }
        SpectralReading net = reading with
        {
            Spectrum = OtherGrid.Changed(table, (i, value) => value - values[i]),
        };
        return ReadingStep.Done(isInterpolated ? SpectralTexts.WarnGrid(net, "the dark reading") : net);
    }

    /// <summary>Takes off the mean over wavelengths at which no light is expected.</summary>
    public static ReadingStep SubtractWindow(SpectralReading reading, WavelengthRange window)
    {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < reading.Spectrum.Count; i++)
        {
            if (window.Contains(reading.Spectrum.WavelengthsNm[i]))
            {
                sum += reading.Spectrum.Values[i];
                count++;
            }
        }
        return count < LeastSamples
            ? ReadingStep.Refused(SpectralTexts.EmptyWindow(window, count, LeastSamples, reading.Spectrum))
            : ReadingStep.Done(
                reading with
                {
                    Spectrum = OtherGrid.Changed(reading.Spectrum, (_, value) => value - (sum / count)),
                }
            );
    }
}
