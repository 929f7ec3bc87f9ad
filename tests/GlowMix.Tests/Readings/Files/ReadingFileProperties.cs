using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using GlowMix.Readings;

namespace GlowMix.Tests.Readings.Files;

/// <summary>A table of positive numbers, formatted in any of the accepted ways, reads back as the same spectrum.</summary>
public class ReadingFileProperties
{
    private static readonly string[][] Headers =
    [
        [],
        ["wavelength;light"],
        ["# made by hand", "nm\tcounts"],
        ["Serial 12345", "Exposure: 12.5 ms", "Scans, 10", "", "Wellenlänge [nm]  Signal"],
        ["17 25 3", "start"],
    ];

    [Fact]
    public void Any_format_reads_back_as_the_same_spectrum() =>
        Prop.ForAll(
                Tables().ToArbitrary(),
                table =>
                {
                    string text = table.Text();
                    SpectralReading reading = ReadText.Spectrum(text);
                    bool same =
                        table.Nm.AsSpan().SequenceEqual(reading.Spectrum.WavelengthsNm)
                        && SameWithinRounding(table.Values, reading.Spectrum.Values);
                    return same.Label($"{reading.Findings}\n{text[..Math.Min(600, text.Length)]}");
                }
            )
            .Check(Config.QuickThrowOnFailure.WithMaxTest(400).WithReplay(42, 77));

    private static bool SameWithinRounding(double[] written, ReadOnlySpan<double> read)
    {
        for (int i = 0; i < written.Length; i++)
        {
            // Raw minus dark, or a unit of its own: the last digit may differ.
            if (Math.Abs(read[i] - written[i]) > 1e-9 * Math.Max(1, Math.Abs(written[i])))
            {
                return false;
            }
        }
        return read.Length == written.Length;
    }

    private static Gen<UntidyTable> Tables() =>
        from nm in Wavelengths()
        from values in Gen.ArrayOf(Values(), nm.Length)
        from delimiter in Gen.Elements('\t', ';', ',', ' ', '|')
        from decimalMark in Gen.Elements('.', ',')
        from lineEnd in Gen.Elements("\n", "\r\n", "\r")
        from header in Gen.Elements(Headers)
        from isDescending in Gen.Elements(true, false)
        from isInMicrometres in Gen.Elements(true, false, false)
        from extra in Gen.Choose(0, 3)
        from remarks in Gen.Elements(0, 0, 7)
        from isDoubled in Gen.Elements(true, false, false)
        from format in Gen.Elements("R", "E9", "0.0000000")
        select new UntidyTable(nm, [.. values.Select(v => Rounded(v, format))])
        {
            Delimiter = delimiter,
            // Commas in both roles are another matter: see SplitDecimalsTests.
            DecimalMark = delimiter == ',' ? '.' : decimalMark,
            LineEnd = lineEnd,
            Header = header,
            IsDescending = isDescending,
            IsInMicrometres = isInMicrometres,
            HasIndex = extra == 1,
            HasRawAndDark = extra == 2,
            RemarkEvery = remarks,
            IsDoubled = isDoubled,
            ValueFormat = format,
        };

    // Even or not, from 0.2 to 10 nm, reaching over part of the visible at least.
    private static Gen<double[]> Wavelengths() =>
        from first in Gen.Choose(200, 420)
        from step in Gen.Elements(0.2, 0.38, 1, 2, 5, 10)
        from count in Gen.Choose(60, 120)
        from isUneven in Gen.Elements(true, false)
        select (double[])
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(i =>
                        Math.Round(
                            first
                                + (i * Widened(step, count, first))
                                + (isUneven ? 0.2 * step * Math.Sin(i) : 0),
                            4
                        )
                    ),
            ];

    // Fine steps in short tables would not reach the visible.
    private static double Widened(double step, int count, int first) =>
        first + (step * count) > 460 ? step : (460 - first + 100) / (double)count;

    private static Gen<double> Values() =>
        from mantissa in Gen.Choose(1, 999_999)
        from exponent in Gen.Choose(-7, -2)
        select mantissa * Math.Pow(10, exponent);

    private static double Rounded(double value, string format) =>
        double.Parse(value.ToString(format, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
