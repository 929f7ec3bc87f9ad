using System.Text;
using GlowMix.Colour;
using GlowMix.Readings;
using GlowMix.Spectra;

namespace GlowMix.Tests.Readings.Files;

/// <summary>
/// CIE illuminants written out in many formats and read again: every number comes back, and with them the figures of
/// CIE 015:2018, which <c>StandardIlluminantsTests</c> holds for the tables themselves.
/// </summary>
public class UntidyIlluminantTests
{
    private static readonly string[] InstrumentHeader =
    [
        "bench 3, reading no. 14",
        "",
        "taken: Wed Nov 25 14:02:11 CET 2026",
        "by: werkstatt",
        "exposure (s): 1.000000E-1",
        "mean of: 10",
        "pixels: 2048",
        "~~~ rows follow ~~~",
    ];

    public static TheoryData<string, string> Cases()
    {
        var cases = new TheoryData<string, string>();
        string[] names =
        [
            "a",
            "d65",
            "fl2",
            "fl8",
            "fl11",
            "led_b1",
            "led_b5",
            "led_bh1",
            "led_rgb1",
            "led_v2",
        ];
        foreach (string name in names)
        {
            foreach (string format in Formats.Keys)
            {
                cases.Add(name, format);
            }
        }
        return cases;
    }

    private static readonly Dictionary<string, Func<UntidyTable, byte[]>> Formats = new()
    {
        ["tabs, no header"] = t => Utf8(t),
        ["commas, point"] = t => Utf8(t with { Delimiter = ',', Header = ["wavelength_nm,power"] }),
        ["semicolons, decimal comma, Latin-1, CRLF"] = t =>
            Encoding.Latin1.GetBytes(
                (
                    t with
                    {
                        Delimiter = ';',
                        DecimalMark = ',',
                        LineEnd = "\r\n",
                        Header =
                        [
                            "Gerät: Prüfstand 7",
                            "Mittelungen;10",
                            "",
                            "Wellenlänge [nm];Bestrahlungsstärke [µW/cm²/nm]",
                        ],
                    }
                ).Text()
            ),
        ["UTF-16 with mark, tabs, decimal comma, French"] = t =>
            [
                0xFF,
                0xFE,
                .. Encoding.Unicode.GetBytes(
                    (
                        t with
                        {
                            DecimalMark = ',',
                            LineEnd = "\r\n",
                            Header = ["Réglage : 12,5 ms", "Longueur d'onde (nm)\tIntensité"],
                        }
                    ).Text()
                ),
            ],
        ["UTF-16 big end, no mark"] = t =>
            Encoding.BigEndianUnicode.GetBytes((t with { Delimiter = ';' }).Text()),
        ["blanks, CR, descending"] = t =>
            Utf8(t with { Delimiter = ' ', LineEnd = "\r", IsDescending = true }),
        ["blanks, decimal comma"] = t => Utf8(t with { Delimiter = ' ', DecimalMark = ',' }),
        ["instrument's header, remarks between"] = t =>
            Utf8(t with { Header = InstrumentHeader, RemarkEvery = 20 }),
        ["micrometres, byte order mark"] = t =>
            [0xEF, 0xBB, 0xBF, .. Utf8(t with { IsInMicrometres = true, Delimiter = ',' })],
        ["index, raw, dark, net without names"] = t =>
            Utf8(t with { HasIndex = true, HasRawAndDark = true, Delimiter = ';' }),
        ["index, raw, dark, net with names"] = t =>
            Utf8(
                t with
                {
                    HasIndex = true,
                    HasRawAndDark = true,
                    Delimiter = ';',
                    Header = ["Nr;Lambda;Roh;Dunkel;Netto"],
                }
            ),
        ["each row twice"] = t => Utf8(t with { IsDoubled = true, Delimiter = ',' }),
        ["exponents"] = t => Utf8(t with { ValueFormat = "E6", Delimiter = ',' }),
        ["wavelengths in a row"] = Across,
        ["quoted cells with decimal commas between commas"] = Quoted,
        ["four pairs on a line"] = t => PairsOnLines(t, down: false),
        ["four pairs on a line, to be read down"] = t => PairsOnLines(t, down: true),
        ["blanks of East Asian type"] = t =>
            Encoding.UTF8.GetBytes((t with { Delimiter = '\u3000', Header = ["ｎｍ\u3000値"] }).Text()),
        ["a wavelength = a value"] = t => Utf8(t with { Delimiter = '=', Header = ["lamp=of the shelf"] }),
        ["metres"] = t =>
            Encoding.UTF8.GetBytes(
                string.Concat(
                    t.Text()
                        .TrimEnd('\n')
                        .Split('\n')
                        .Select(row => row.Replace("\t", "E-9\t", StringComparison.Ordinal) + "\n")
                )
            ),
        ["brackets round each row"] = t =>
            Encoding.UTF8.GetBytes(
                string.Concat(
                    (t with { Delimiter = ',' }).Text().TrimEnd('\n').Split('\n').Select(row => $"[{row}],\n")
                )
            ),
        ["a program's list of pairs, one a line"] = t =>
            Encoding.UTF8.GetBytes(
                $"[({string.Join("),\n (", (t with { Delimiter = ',' }).Text().TrimEnd('\n').Split('\n'))})]"
            ),
        ["a program's list of pairs on one line"] = t =>
            Encoding.UTF8.GetBytes(
                $"{{{{{string.Join("}, {", (t with { Delimiter = ',' }).Text().TrimEnd('\n').Split('\n'))}}}}}"
            ),
        ["units behind each number"] = t =>
            Encoding.UTF8.GetBytes(
                string.Concat(
                    t.Text()
                        .TrimEnd('\n')
                        .Split('\n')
                        .Select(row => row.Replace("\t", " nm\t", StringComparison.Ordinal) + " µW\n")
                )
            ),
        ["a header that tells first and last wavelength"] = t =>
            Utf8(t with { Header = ["2026-03-14", "38.1\t11.5", $"{t.Nm[0]}\t{t.Nm[^1]}"] }),
        ["a header of numbers right above"] = t => Utf8(t with { Header = ["3\t100"] }),
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void An_illuminant_comes_back_from_every_format(string name, string format)
    {
        TabulatedSpectrum table = StandardIlluminants.Named(name).Between(380, 780);
        double[] values = [.. table.Values.ToArray().Select(v => Math.Round(v, 6))];
        byte[] bytes = Formats[format](new(table.WavelengthsNm.ToArray(), values));
        SpectralReading reading = ReadText.Spectrum(bytes);

        Assert.Equal(table.WavelengthsNm.ToArray(), reading.Spectrum.WavelengthsNm.ToArray());
        double scale = reading.Unit == SpectralUnit.WPerM2Nm ? 0.01 : 1;
        double most = values.Max();
        for (int i = 0; i < values.Length; i++)
        {
            Assert.Equal(scale * values[i], reading.Spectrum.Values[i], 1e-6 * most);
        }
        ColourFigures own = ColourFigures.Of(table);
        ColourFigures read = ColourFigures.Of(reading.Spectrum);
        Assert.Equal(own.CctK!.Value, read.CctK!.Value, 0.01);
        Assert.Equal(own.Ra!.Value, read.Ra!.Value, 0.01);
        Assert.Equal(own.ChromaticityX!.Value, read.ChromaticityX!.Value, 1e-6);
        Assert.Equal(own.ChromaticityY!.Value, read.ChromaticityY!.Value, 1e-6);
    }

    private static byte[] Utf8(UntidyTable table) => Encoding.UTF8.GetBytes(table.Text());

    private static byte[] Across(UntidyTable table)
    {
        string[] rows = table.Text().TrimEnd('\n').Split('\n');
        string nm = string.Join('\t', rows.Select(r => r.Split('\t')[0]));
        string values = string.Join('\t', rows.Select(r => r.Split('\t')[1]));
        return Encoding.UTF8.GetBytes($"Wavelength\t{nm}\nSample 1\t{values}\n");
    }

    private static byte[] PairsOnLines(UntidyTable table, bool down)
    {
        const int Pairs = 4;
        string[] rows = table.Text().TrimEnd('\n').Split('\n');
        int lines = (rows.Length + Pairs - 1) / Pairs;
        return Encoding.UTF8.GetBytes(
            string.Concat(
                Enumerable
                    .Range(0, lines)
                    .Select(i =>
                        string.Join(
                            "   ",
                            Enumerable
                                .Range(0, Pairs)
                                .Select(j => down ? i + (j * lines) : (i * Pairs) + j)
                                .Where(at => at < rows.Length)
                                .Select(at => rows[at].Replace('\t', ' '))
                        ) + "\n"
                    )
            )
        );
    }

    private static byte[] Quoted(UntidyTable table)
    {
        string[] rows = (table with { DecimalMark = ',' }).Text().TrimEnd('\n').Split('\n');
        return Encoding.UTF8.GetBytes(
            string.Join('\n', rows.Select(r => string.Join(',', r.Split('\t').Select(c => $"\"{c}\""))))
                + "\n"
        );
    }
}
