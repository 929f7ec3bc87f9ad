using System.Globalization;
using GlowMix.Readings;

namespace GlowMix.Tests.Readings.Files;

/// <summary>Spectra over frequencies, photon energies and wavenumbers are refused by what they are, with a name or without.</summary>
public class OtherScaleTests
{
    // Wavelength times photon energy, CODATA 2018: h c / e = 1239.84198 eV nm; c is 299 792.458 nm THz.
    [Theory]
    [InlineData("Frequency (THz)", 299_792.458, "frequencies in THz")]
    [InlineData("f [THz]", 299_792.458, "frequencies in THz")]
    [InlineData("", 299_792.458, "frequencies in THz")]
    [InlineData("Frequenz (Hz)", 2.99792458e17, "frequencies in Hz")]
    [InlineData("Photonenergie/eV", 1239.84198, "photon energies in eV")]
    [InlineData("", 1239.84198, "photon energies in eV")]
    [InlineData("", 1e7, "wavenumbers per cm")]
    [InlineData("Волновое число", 1e7, "wavenumbers per cm")]
    public void It_is_refused_by_its_name(string name, double timesNm, string scale)
    {
        foreach (bool falls in (bool[])[true, false])
        {
            var rows = Enumerable
                .Range(0, 81)
                .Select(i => 380 + (5 * (falls ? i : 80 - i)))
                .Select(nm =>
                    string.Create(CultureInfo.InvariantCulture, $"{timesNm / nm:G7}\t{nm - 370}\n")
                );
            string header = name.Length == 0 ? "" : $"{name}\tvalue\n";
            Assert.Contains(
                $"seems to count {scale}",
                ReadText.Problem(header + string.Concat(rows)),
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void Beside_wavelengths_it_is_set_aside()
    {
        SpectralReading reading = ReadText.Spectrum("eV,nm,power\n3.1,400,1\n2.48,500,3\n2.07,600,2\n");
        Assert.Equal(2, reading.Findings.Along.Number);
        Assert.Equal(3, reading.Findings.Light.Number);
    }

    [Fact]
    public void Minutes_without_a_name_stay_a_decay() =>
        Assert.Equal([1, 2, 3, 5], ReadText.Decay("1\t100\n2\t51\n3\t30\n5\t19\n").Minutes.ToArray());

    [Fact]
    public void The_user_has_the_last_word() =>
        Assert.Equal(
            [400, 500, 600],
            ReadText
                .Spectrum(
                    "Frequency;power\n400;1\n500;3\n600;2\n",
                    new() { WavelengthUnit = LengthUnit.Nanometre }
                )
                .Spectrum.WavelengthsNm.ToArray()
        );
}
