namespace GlowMix.Spectra;

/// <summary>
/// Immutable samples at ascending wavelengths of any grid, even or not: a table of a standard, a material's data, a
/// reading. Between two samples the value is the straight line through them, beyond the first and the last it is zero.
/// What a value means, and its unit, is in the name of whoever holds the table.
/// </summary>
public sealed class TabulatedSpectrum
{
    private readonly double[] wavelengthsNm;
    private readonly double[] values;

    private TabulatedSpectrum(double[] wavelengthsNm, double[] values) =>
        (this.wavelengthsNm, this.values) = (wavelengthsNm, values);

    /// <summary>Wavelengths in nm, strictly ascending; at least two.</summary>
    public ReadOnlySpan<double> WavelengthsNm => wavelengthsNm;

    /// <summary>One value a wavelength, in their order.</summary>
    public ReadOnlySpan<double> Values => values;

    /// <summary>Number of samples.</summary>
    public int Count => values.Length;

    /// <summary>Shortest wavelength, nm.</summary>
    public double FirstNm => wavelengthsNm[0];

    /// <summary>Longest wavelength, nm.</summary>
    public double LastNm => wavelengthsNm[^1];

    /// <summary>A copy of a table.</summary>
    /// <param name="wavelengthsNm">Wavelengths in nm: positive, strictly ascending, at least two.</param>
    /// <param name="values">Finite numbers, one a wavelength.</param>
    /// <exception cref="ArgumentException">The table breaks one of these rules; the message says where.</exception>
    public static TabulatedSpectrum From(ReadOnlySpan<double> wavelengthsNm, ReadOnlySpan<double> values)
    {
        if (wavelengthsNm.Length != values.Length)
        {
            throw new ArgumentException(
                $"A spectrum has one value a wavelength, not {values.Length} values for {wavelengthsNm.Length} wavelengths."
            );
        }
        if (wavelengthsNm.Length < 2)
        {
            throw new ArgumentException(
                $"A spectrum has at least two wavelengths, not {wavelengthsNm.Length}."
            );
        }
        double beforeNm = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double nm = wavelengthsNm[i];
            if (!double.IsFinite(nm) || nm <= beforeNm)
            {
                throw new ArgumentException(
                    FormattableString.Invariant(
                        $"Wavelengths are positive, in nm, and ascend; number {i + 1} is {nm} after {beforeNm}."
                    )
                );
            }
            if (!double.IsFinite(values[i]))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"The value at {nm} nm is not a finite number.")
                );
            }
            beforeNm = nm;
        }
        return new(wavelengthsNm.ToArray(), values.ToArray());
    }

    /// <summary>The value on the straight line between the samples; zero beyond the table.</summary>
    /// <param name="nm">Wavelength, nm.</param>
    public double ValueAtNm(double nm)
    {
        int after = IndexAtOrAfter(nm);
        if (after == values.Length || (after == 0 && nm < wavelengthsNm[0]))
        {
            return 0;
        }
        if (wavelengthsNm[after] == nm)
        {
            return values[after];
        }
        double share = (nm - wavelengthsNm[after - 1]) / (wavelengthsNm[after] - wavelengthsNm[after - 1]);
        return values[after - 1] + (share * (values[after] - values[after - 1]));
    }

    /// <summary>The samples from one wavelength to another, both included.</summary>
    /// <param name="firstNm">Shortest wavelength to keep, nm.</param>
    /// <param name="lastNm">Longest wavelength to keep, nm.</param>
    /// <exception cref="ArgumentException">Fewer than two samples lie there.</exception>
    public TabulatedSpectrum Between(double firstNm, double lastNm)
    {
        int from = IndexAtOrAfter(firstNm);
        int to = from;
        while (to < Count && wavelengthsNm[to] <= lastNm)
        {
            to++;
        }
        return to - from >= 2
            ? new(wavelengthsNm[from..to], values[from..to])
            : throw new ArgumentException(
                FormattableString.Invariant(
                    $"Fewer than two samples lie from {firstNm} to {lastNm} nm; the table has {FirstNm} to {LastNm} nm."
                )
            );
    }

    /// <summary>Index of the first sample at a wavelength or beyond it; <see cref="Count"/> where there is none.</summary>
    internal int IndexAtOrAfter(double nm)
    {
        // By hand: Array.BinarySearch of doubles is compiled at each start of the program, for half a millisecond.
        int low = 0;
        int high = wavelengthsNm.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (wavelengthsNm[middle] < nm)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }
        return low;
    }
}
