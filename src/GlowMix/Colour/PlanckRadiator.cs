using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>Relative spectrum of a black body.</summary>
public static class PlanckRadiator
{
    /// <summary>c₂ = h c / k, m K.</summary>
    /// <remarks>
    /// SI of 2019. CIE 015 keeps 1.4388e-2 (ITS-90), which gives CCTs 0.0016 % higher: 0.1 K at 6500 K. In colorimetry
    /// the index of air is left out.
    /// </remarks>
    public const double SecondRadiationConstantMetreKelvin = 1.438776877e-2;

    /// <summary>Power per nm relative to 560 nm, on the model's grid.</summary>
    /// <param name="temperatureK">Temperature, K, 100 to 1 000 000.</param>
    public static Spectrum OnModelGrid(double temperatureK)
    {
        var samples = new double[WavelengthGrid.Count];
        for (int i = 0; i < samples.Length; i++)
        {
            samples[i] = RelativeTo560Nm(WavelengthGrid.NmAt(i), temperatureK);
        }
        return Spectrum.FromSamples(samples);
    }

    /// <summary>Power per nm relative to 560 nm.</summary>
    /// <param name="nm">Wavelength, nm, above 0.</param>
    /// <param name="temperatureK">Temperature, K, 100 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range, or nm is not above 0.</exception>
    public static double RelativeTo560Nm(double nm, double temperatureK)
    {
        if (nm is not (> 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(nameof(nm), nm, "A wavelength must be above 0 nm.");
        }
        CheckTemperature(temperatureK);
        double ratio = 560 / nm;
        double exponentAt560 = SecondRadiationConstantMetreKelvin / (560e-9 * temperatureK);
        double exponent = exponentAt560 * ratio;
        // The difference of the exponents first: a cold body's own exp overflows long before the ratio does.
        return Math.Pow(ratio, 5)
            * Math.Exp(exponentAt560 - exponent)
            * ((1 - Math.Exp(-exponentAt560)) / (1 - Math.Exp(-exponent)));
    }

    /// <summary>Refuses a temperature at which the ratios of the visible range are no longer numbers.</summary>
    internal static void CheckTemperature(double temperatureK)
    {
        if (temperatureK is not (>= 100 and <= 1_000_000))
        {
            throw new ArgumentOutOfRangeException(
                nameof(temperatureK),
                temperatureK,
                "A black body's temperature must be 100 to 1 000 000 K."
            );
        }
    }
}
