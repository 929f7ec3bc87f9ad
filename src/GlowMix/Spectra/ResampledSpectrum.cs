namespace GlowMix.Spectra;

/// <summary>
/// A table brought onto the model's grid, and what had to be done for it, so that whoever reads a file can warn.
/// </summary>
/// <param name="Spectrum">The samples on <see cref="WavelengthGrid"/>, in the table's unit; zero beyond the table.</param>
/// <param name="IsInterpolated">
/// True where the table is coarser than the grid, so that values between its samples were made up by straight lines.
/// </param>
/// <param name="WidestStepNm">Widest distance of neighbouring wavelengths in the table inside the grid, nm.</param>
/// <param name="FirstKnownNm">First wavelength of the grid that the table reaches, nm; null where it reaches none.</param>
/// <param name="LastKnownNm">Last wavelength of the grid that the table reaches, nm; null where it reaches none.</param>
/// <remarks>
/// Sample by sample:
/// <list type="bullet">
/// <item>A table's sample on the grid whose neighbours are exactly 5 nm away is taken as it is.</item>
/// <item>Where the table has no step wider than 5 nm around, the sample is the mean over the band of 5 nm centred at it:
/// the integral of the piecewise linear data, divided by the width. Data finer than the grid keep their integral in this
/// way, and noise averages out. At an end of the table the mean is taken over what the table covers of the band.</item>
/// <item>Elsewhere it is read off the straight line between the table's neighbours.</item>
/// <item>Beyond the table it is zero.</item>
/// </list>
/// </remarks>
public sealed record ResampledSpectrum(
    Spectrum Spectrum,
    bool IsInterpolated,
    double WidestStepNm,
    int? FirstKnownNm,
    int? LastKnownNm
)
{
    // Wavelengths are written with a few decimals at most, but may be summed up from a step (380 + 81 × 5.000…01).
    private const double SamePlaceNm = 1e-6;
    private const double StepLimitNm = WavelengthGrid.StepNm + SamePlaceNm;
    private const double HalfBandNm = WavelengthGrid.StepNm / 2.0;

    /// <summary>The table reaches both ends of the grid, so that no sample is zero for want of data.</summary>
    public bool CoversGrid => FirstKnownNm == WavelengthGrid.FirstNm && LastKnownNm == WavelengthGrid.LastNm;

    /// <summary>Brings a table onto the model's grid.</summary>
    public static ResampledSpectrum From(TabulatedSpectrum table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var samples = new double[WavelengthGrid.Count];
        bool interpolated = false;
        int? first = null;
        int? last = null;
        for (int i = 0; i < samples.Length; i++)
        {
            int centreNm = WavelengthGrid.NmAt(i);
            if (centreNm < table.FirstNm - SamePlaceNm || centreNm > table.LastNm + SamePlaceNm)
            {
                continue;
            }
            first ??= centreNm;
            last = centreNm;
            int onGrid = table.IndexAtOrAfter(centreNm - SamePlaceNm);
            if (IsStepOfGrid(table, onGrid, centreNm))
            {
                samples[i] = table.Values[onGrid];
            }
            else if (WidestStepBetween(table, centreNm - HalfBandNm, centreNm + HalfBandNm) <= StepLimitNm)
            {
                samples[i] = MeanBetween(table, centreNm - HalfBandNm, centreNm + HalfBandNm);
            }
            else
            {
                samples[i] = table.ValueAtNm(Math.Clamp(centreNm, table.FirstNm, table.LastNm));
                interpolated = true;
            }
        }
        return new(
            Spectrum.FromSamples(samples),
            interpolated,
            WidestStepBetween(table, WavelengthGrid.FirstNm, WavelengthGrid.LastNm),
            first,
            last
        );
    }

    private static bool IsStepOfGrid(TabulatedSpectrum table, int index, int centreNm)
    {
        ReadOnlySpan<double> nm = table.WavelengthsNm;
        return index < nm.Length
            && Math.Abs(nm[index] - centreNm) <= SamePlaceNm
            && (index == 0 || Math.Abs(nm[index] - nm[index - 1] - WavelengthGrid.StepNm) <= SamePlaceNm)
            && (
                index == nm.Length - 1
                || Math.Abs(nm[index + 1] - nm[index] - WavelengthGrid.StepNm) <= SamePlaceNm
            );
    }

    private static double WidestStepBetween(TabulatedSpectrum table, double fromNm, double toNm)
    {
        ReadOnlySpan<double> nm = table.WavelengthsNm;
        double widest = 0;
        for (int i = Math.Max(1, table.IndexAtOrAfter(fromNm + SamePlaceNm)); i < nm.Length; i++)
        {
            if (nm[i - 1] >= toNm - SamePlaceNm)
            {
                break;
            }
            widest = Math.Max(widest, nm[i] - nm[i - 1]);
        }
        return widest;
    }

    /// <summary>Mean of the piecewise linear data over the part of a band that the table covers.</summary>
    private static double MeanBetween(TabulatedSpectrum table, double fromNm, double toNm)
    {
        fromNm = Math.Max(fromNm, table.FirstNm);
        toNm = Math.Min(toNm, table.LastNm);
        if (toNm - fromNm <= SamePlaceNm)
        {
            return table.ValueAtNm(Math.Clamp(fromNm, table.FirstNm, table.LastNm));
        }
        double integral = 0;
        double leftNm = fromNm;
        double left = table.ValueAtNm(fromNm);
        for (int i = table.IndexAtOrAfter(fromNm); leftNm < toNm; i++)
        {
            double rightNm = Math.Min(table.WavelengthsNm[i], toNm);
            double right = rightNm < toNm ? table.Values[i] : table.ValueAtNm(toNm);
            integral += (rightNm - leftNm) * (left + right) / 2;
            (leftNm, left) = (rightNm, right);
        }
        return integral / (toNm - fromNm);
    }
}
