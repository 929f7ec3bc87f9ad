using System.Globalization;
using System.Text;

namespace GlowMix.Tests.Readings.Files;

/// <summary>A table of wavelengths and values written out in one of the ways that instruments and people have.</summary>
internal sealed record UntidyTable(double[] Nm, double[] Values)
{
    public char Delimiter { get; init; } = '\t';

    public char DecimalMark { get; init; } = '.';

    public string LineEnd { get; init; } = "\n";

    public string[] Header { get; init; } = [];

    public bool IsDescending { get; init; }

    public bool IsInMicrometres { get; init; }

    /// <summary>A running number in front.</summary>
    public bool HasIndex { get; init; }

    /// <summary>Raw and dark columns before the values, which are their difference.</summary>
    public bool HasRawAndDark { get; init; }

    /// <summary>A remark after so many rows; 0 for none.</summary>
    public int RemarkEvery { get; init; }

    /// <summary>Each row twice.</summary>
    public bool IsDoubled { get; init; }

    /// <summary>Format of the values.</summary>
    public string ValueFormat { get; init; } = "R";

    public string Text()
    {
        var text = new StringBuilder();
        foreach (string line in Header)
        {
            text.Append(line).Append(LineEnd);
        }
        string gap = Delimiter == ' ' ? "  " : Delimiter.ToString();
        for (int i = 0; i < Nm.Length; i++)
        {
            int at = IsDescending ? Nm.Length - 1 - i : i;
            string nm = IsInMicrometres ? Number(Math.Round(Nm[at] / 1000, 9), "R") : Number(Nm[at], "R");
            string value = Number(Values[at], ValueFormat);
            var cells = new List<string> { nm };
            if (HasIndex)
            {
                cells.Insert(0, i.ToString(CultureInfo.InvariantCulture));
            }
            if (HasRawAndDark)
            {
                double dark = 0.01 * Values.Max() * (1 + (0.1 * Math.Sin(i)));
                cells.Add(Number(Values[at] + dark, "R"));
                cells.Add(Number(dark, "R"));
            }
            cells.Add(value);
            for (int copy = 0; copy < (IsDoubled ? 2 : 1); copy++)
            {
                text.Append(string.Join(gap, cells)).Append(LineEnd);
            }
            if (RemarkEvery > 0 && i % RemarkEvery == RemarkEvery - 1)
            {
                string mark = (i / RemarkEvery % 3) switch
                {
                    0 => "# ",
                    1 => "-- ",
                    _ => "",
                };
                text.Append(mark).Append("lamp warm since ").Append(i).Append(" rows").Append(LineEnd);
            }
        }
        return text.ToString();
    }

    private string Number(double value, string format) =>
        value.ToString(format, CultureInfo.InvariantCulture).Replace('.', DecimalMark);
}
