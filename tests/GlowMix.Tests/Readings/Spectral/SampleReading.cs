using GlowMix.Readings;
using GlowMix.Spectra;

namespace GlowMix.Tests.Readings.Spectral;

/// <summary>Readings without a file.</summary>
internal static class SampleReading
{
    public static SpectralReading Of(TabulatedSpectrum table, SpectralUnit unit = SpectralUnit.WPerM2Nm) =>
        new()
        {
            File = "sample",
            Spectrum = table,
            Unit = unit,
            Findings = new()
            {
                Kind = ReadingKind.Spectrum,
                Encoding = "UTF-8",
                Delimiter = "tabs",
                DecimalMark = "point",
                HeaderLines = 0,
                FirstLine = 1,
                LastLine = table.Count,
                Rows = table.Count,
                Columns = 2,
                Along = new(1, ""),
                AlongUnit = "nm",
                Light = new(2, ""),
                LightUnit = "W/m²/nm",
            },
        };

    public static TabulatedSpectrum Changed(TabulatedSpectrum table, Func<double, double, double> change)
    {
        double[] nm = table.WavelengthsNm.ToArray();
        double[] values = table.Values.ToArray();
        return TabulatedSpectrum.From(nm, [.. nm.Zip(values, change)]);
    }
}
