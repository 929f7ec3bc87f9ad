using System.Text;
using GlowMix.Readings;
using GlowMix.Readings.Files;

namespace GlowMix.Tests.Readings.Files;

/// <summary>Headers in many languages, as programs of their countries store them: code pages that no mark announces.</summary>
public class HeaderLanguageTests
{
    [Theory]
    [InlineData(1250, "Vlnová délka (nm)\tVzorek\tTemný signál")]
    [InlineData(28592, "Długość fali [nm]\tPróbka\tTło")]
    [InlineData(1250, "Hullámhossz (nm)\tMinta\tSötét")]
    [InlineData(1250, "Valna duljina (nm)\tUzorak\tTamno")]
    [InlineData(1251, "Длина волны, нм\tОбразец\tТемновой сигнал")]
    [InlineData(20866, "Длина волны, нм\tОбразец\tФон")]
    [InlineData(866, "Длина волны, нм\tСигнал\tТемновой")]
    [InlineData(1251, "Довжина хвилі, нм\tЗразок\tТемновий")]
    [InlineData(1251, "Дължина на вълната\tПроба\tТъмно")]
    [InlineData(932, "波長 (nm)\tサンプル\tダーク")]
    [InlineData(51932, "波長 (nm)\t試料\t暗電流")]
    [InlineData(936, "波长(nm)\t样品\t暗背景")]
    [InlineData(950, "波長(nm)\t樣品\t暗光譜")]
    [InlineData(949, "파장(nm)\t시료\t암전류")]
    [InlineData(1253, "Μήκος κύματος (nm)\tΔείγμα\tΣκοτάδι")]
    [InlineData(1254, "Dalga boyu (nm)\tÖrnek\tKaranlık")]
    [InlineData(850, "Wellenlänge\tZählrate\tDunkel")]
    [InlineData(10000, "Våglängd\tProv\tMörker")]
    [InlineData(1252, "Longueur d’onde (nm)\tÉchantillon\tObscurité")]
    [InlineData(65001, "Lungime de undă (nm)\tProbă\tÎntuneric")]
    [InlineData(65001, "אורך גל (nm)\tדגימה\tחושך")]
    [InlineData(65001, "ความยาวคลื่น (nm)\tตัวอย่าง\tมืด")]
    public void The_dark_column_is_found_and_taken_off(int codePage, string header)
    {
        Encoding encoding =
            codePage == 65001 ? Encoding.UTF8 : CodePagesEncodingProvider.Instance.GetEncoding(codePage)!;
        foreach (bool darkIsFirst in (bool[])[false, true])
        {
            string[] names = header.Split('\t');
            var text = new StringBuilder(
                darkIsFirst ? $"{names[0]}\t{names[2]}\t{names[1]}\n" : header + "\n"
            );
            for (int i = 0; i < 40; i++)
            {
                int dark = 10 + (i % 3);
                int light = dark + (i * (40 - i));
                text.Append(380 + (10 * i)).Append('\t');
                text.Append(darkIsFirst ? $"{dark}\t{light}\n" : $"{light}\t{dark}\n");
            }
            SpectralReading reading = ReadText.Spectrum(encoding.GetBytes(text.ToString()));
            Assert.Equal(39, reading.Spectrum.Values[1]);
            Assert.Equal(400, reading.Spectrum.Values[20]);
            Assert.Equal(darkIsFirst ? 2 : 3, reading.Findings.Dark?.Number);
            Assert.Equal(names[0], reading.Findings.Along.Name.Replace('\'', '’'));
        }
    }

    [Fact]
    public void A_text_that_tells_nothing_is_Latin_1()
    {
        byte[] header = [(byte)'n', (byte)'m', (byte)'\t', 0xE4, 0xF6, (byte)'\n'];
        Assert.Equal(
            "Latin-1",
            ReadText.Spectrum([.. header, .. "450\t1\n500\t3\n550\t2\n"u8]).Findings.Encoding
        );
    }

    [Fact]
    public void Bytes_of_another_encoding_do_not_spoil_UTF_8()
    {
        byte[] bytes =
        [
            .. "Gerät: Prüfstand\nλ (nm)\tE (µW/cm²/nm)\n400\t1\n500\t3\n600\t2\n# gepr"u8,
            0xFC,
            .. "ft\n"u8,
        ];
        SpectralReading reading = ReadText.Spectrum(bytes);
        Assert.Equal("UTF-8 with faults", reading.Findings.Encoding);
        Assert.Equal(SpectralUnit.WPerM2Nm, reading.Unit);
    }

    [Fact]
    public void What_was_encoded_twice_is_decoded_twice()
    {
        string twice = Encoding.Latin1.GetString("Wellenlänge\tE (µW/cm²/nm)\n400\t1\n500\t3\n600\t2\n"u8);
        SpectralReading reading = ReadText.Spectrum(twice);
        Assert.Equal("Wellenlänge", reading.Findings.Along.Name);
        Assert.Equal(SpectralUnit.WPerM2Nm, reading.Unit);
    }

    [Theory]
    [InlineData("S", ColumnRole.Light)]
    [InlineData("t [s]", ColumnRole.Time)]
    [InlineData("E(λ)", ColumnRole.Light)]
    [InlineData("S_lambda", ColumnRole.Light)]
    [InlineData("λ/nm", ColumnRole.Wavelength)]
    [InlineData("lambda (nm)", ColumnRole.Wavelength)]
    [InlineData("V(λ)", ColumnRole.Weighted)]
    [InlineData("y_bar", ColumnRole.Weighted)]
    [InlineData("x̄(λ)", ColumnRole.Weighted)]
    [InlineData("log10(E)", ColumnRole.Logarithm)]
    [InlineData("Absorbance", ColumnRole.Logarithm)]
    [InlineData("écart-type", ColumnRole.Aside)]
    [InlineData("Stabw", ColumnRole.Aside)]
    [InlineData("Mittelwert", ColumnRole.Mean)]
    [InlineData("MW", ColumnRole.Mean)]
    [InlineData("mW/m2/nm", ColumnRole.Light)]
    [InlineData("W/(m²·nm)", ColumnRole.Light)]
    [InlineData("Energy (eV)", ColumnRole.OtherScale)]
    [InlineData("Frequenz / THz", ColumnRole.OtherScale)]
    [InlineData("blackbody 2856 K", ColumnRole.Reference)]
    [InlineData("dark current", ColumnRole.Dark)]
    [InlineData("Scope minus dark", ColumnRole.Net)]
    [InlineData("Exposure", ColumnRole.Unknown)]
    internal void A_name_has_its_role(string name, ColumnRole role) =>
        Assert.Equal(role, HeaderWords.RoleOf(name));
}
