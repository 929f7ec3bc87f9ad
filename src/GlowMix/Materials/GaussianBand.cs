using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>Bands of emission, Gaussian in wavelength, on the model's wavelengths; each integrates to 1 over nm.</summary>
public static class GaussianBand
{
    /// <summary>A symmetric band, 1/nm.</summary>
    /// <param name="peakNm">Wavelength of the peak, nm.</param>
    /// <param name="fwhmNm">Full width at half maximum, nm, above 0.</param>
    public static Spectrum PerNm(double peakNm, double fwhmNm) => PerNm(peakNm, fwhmNm, fwhmNm);

    /// <summary>A band of two halves that meet at the peak, 1/nm.</summary>
    /// <param name="peakNm">Wavelength of the peak, nm.</param>
    /// <param name="shortFwhmNm">Full width at half maximum that the short side would have if symmetric, nm, above 0.</param>
    /// <param name="longFwhmNm">The same of the long side.</param>
    /// <exception cref="ArgumentOutOfRangeException">No light of the band lies on the grid.</exception>
    public static Spectrum PerNm(double peakNm, double shortFwhmNm, double longFwhmNm)
    {
        var band = Spectrum.FromNm(nm =>
        {
            double fwhmNm = nm < peakNm ? shortFwhmNm : longFwhmNm;
            double halfWidths = 2 * (nm - peakNm) / fwhmNm;
            return Math.Exp(-Math.Log(2) * halfWidths * halfWidths);
        });
        double integral = band.IntegralOverNm();
        return integral > 0
            ? 1 / integral * band
            : throw new ArgumentOutOfRangeException(
                nameof(peakNm),
                peakNm,
                "No light of the band lies from 340 to 780 nm."
            );
    }
}
