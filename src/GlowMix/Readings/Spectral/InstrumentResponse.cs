using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>What an instrument makes of a watt at each wavelength, from its reading of a lamp whose spectrum is known.</summary>
public sealed class InstrumentResponse
{
    // Where lamp or reading are this far down, their ratio is noise.
    private const double LeastOfPeak = 0.01;

    private readonly TabulatedSpectrum lampReading;
    private readonly double[] response;
    private readonly double readingPeak;
    private readonly double lampPeak;

    private InstrumentResponse(TabulatedSpectrum lampReading, TabulatedSpectrum lamp)
    {
        this.lampReading = lampReading;
        response = new double[lampReading.Count];
        readingPeak = Peak(lampReading);
        lampPeak = Peak(lamp);
        for (int i = 0; i < response.Length; i++)
        {
            double light = lamp.ValueAtNm(lampReading.WavelengthsNm[i]);
            response[i] =
                light > LeastOfPeak * lampPeak && lampReading.Values[i] > LeastOfPeak * readingPeak
                    ? lampReading.Values[i] / light
                    : double.NaN;
        }
    }

    /// <summary>From a reading of a lamp.</summary>
    /// <param name="lampReading">The reading, dark taken off.</param>
    /// <param name="lamp">The lamp's spectrum in any unit.</param>
    public static InstrumentResponse From(SpectralReading lampReading, TabulatedSpectrum lamp) =>
        new(lampReading.Spectrum, lamp);

    /// <summary>
    /// The spectrum of a lamp by name: one of the shelf, or a temperature such as '2856K' for a glowing body.
    /// </summary>
    /// <returns>Null where there is none of that name.</returns>
    public static TabulatedSpectrum? LampNamed(string name, Shelf shelf)
    {
        string number = name.TrimEnd('K', 'k', ' ');
        if (
            double.TryParse(
                number,
                System.Globalization.NumberStyles.AllowDecimalPoint,
                System.Globalization.CultureInfo.InvariantCulture,
                out double temperatureK
            )
        )
        {
            return temperatureK is >= PlanckianLocus.LowestCctK and <= PlanckianLocus.HighestCctK
                ? GlowingBody(temperatureK)
                : null;
        }
        if (shelf.Lamp(name).Material is not { } lamp)
        {
            return null;
        }
        double[] nm =
        [
            .. Enumerable.Range(0, WavelengthGrid.Count).Select(i => (double)WavelengthGrid.NmAt(i)),
        ];
        return TabulatedSpectrum.From(nm, lamp.RelativeSpectrum.Value.Samples);
    }

    /// <summary>Divides a reading by the response, where it is known.</summary>
    public ReadingStep Correct(SpectralReading reading)
    {
        if (OtherGrid.Of(reading.Spectrum, lampReading) is not var (table, _, isInterpolated))
        {
            return ReadingStep.Refused(
                SpectralTexts.NoOverlap("the reading of the known lamp", reading.Spectrum, lampReading)
            );
        }
        var nm = new List<double>();
        var values = new List<double>();
        for (int i = 0; i < table.Count; i++)
        {
            double known = ResponseAt(table.WavelengthsNm[i]);
            if (!double.IsNaN(known))
            {
                nm.Add(table.WavelengthsNm[i]);
                values.Add(table.Values[i] / known);
            }
        }
        if (nm.Count < 2)
        {
            return ReadingStep.Refused(SpectralTexts.NoResponse);
        }
        SpectralReading corrected = reading with
        {
            Spectrum = TabulatedSpectrum.From([.. nm], [.. values]),
            Unit = SpectralUnit.Relative,
            IsCorrected = true,
        };
        if (nm[0] > WavelengthRange.Visible.FromNm + 20 || nm[^1] < WavelengthRange.Visible.ToNm - 80)
        {
            corrected = corrected.Warned(
                "response_range",
                ReadingTexts.Invariant(
                    $"the response is known from {nm[0]:0.#} to {nm[^1]:0.#} nm; beyond, the known lamp gives under {100 * LeastOfPeak:0} % of its peak, and the reading is left out"
                )
            );
        }
        return ReadingStep.Done(
            isInterpolated ? SpectralTexts.WarnGrid(corrected, "the reading of the known lamp") : corrected
        );
    }

    // Between two known samples on the straight line; NaN beside an unknown one.
    private double ResponseAt(double nm)
    {
        int after = lampReading.IndexAtOrAfter(nm - 0.011);
        if (after >= response.Length)
        {
            return double.NaN;
        }
        double atNm = lampReading.WavelengthsNm[after];
        if (after == 0 || Math.Abs(atNm - nm) <= 0.011)
        {
            return response[after];
        }
        double beforeNm = lampReading.WavelengthsNm[after - 1];
        return response[after - 1]
            + ((nm - beforeNm) / (atNm - beforeNm) * (response[after] - response[after - 1]));
    }

    private static TabulatedSpectrum GlowingBody(double temperatureK)
    {
        double[] nm = [.. Enumerable.Range(300, 801).Select(n => (double)n)];
        return TabulatedSpectrum.From(
            nm,
            [.. nm.Select(n => PlanckRadiator.RelativeTo560Nm(n, temperatureK))]
        );
    }

    // In the visible: a glowing body's peak lies in the infrared.
    private static double Peak(TabulatedSpectrum table)
    {
        double most = 0;
        for (int i = 0; i < table.Count; i++)
        {
            if (WavelengthRange.Visible.Contains(table.WavelengthsNm[i]))
            {
                most = Math.Max(most, table.Values[i]);
            }
        }
        return most;
    }
}
