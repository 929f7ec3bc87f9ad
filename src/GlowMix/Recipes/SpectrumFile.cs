using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Recipes;

/// <summary>
/// The spectrum of a LED as a plain table: a wavelength in nm and a value a line, separated by a comma, a semicolon, a tab
/// or blanks; numbers with a point; lines above the first number are a header, '#' begins a comment. The values are power
/// per nm in any unit, as only their proportions are used.
/// </summary>
public sealed class SpectrumFile
{
    // One mistake usually repeats on every line.
    private const int MostProblems = 20;

    private SpectrumFile(TabulatedSpectrum? table, ImmutableArray<Problem> problems) =>
        (Table, Problems) = (table, problems);

    /// <summary>Relative power per nm, 0 or more and not all 0; null if there are errors.</summary>
    public TabulatedSpectrum? Table { get; }

    /// <summary>Errors and warnings in line order.</summary>
    public ImmutableArray<Problem> Problems { get; }

    private static NumberRange AllowedNm { get; } = NumberRange.Between(200, 2500);

    /// <summary>Reads what <see cref="DocumentFile.Read"/> returned.</summary>
    public static SpectrumFile Read(FileText file) =>
        file.Problem is null ? Read(file.Text, file.Name) : new(null, [file.Problem]);

    /// <summary>Reads a text. Never throws for what the text holds.</summary>
    public static SpectrumFile Read(string text, string name)
    {
        var problems = new ProblemList(name);
        var wavelengthsNm = new List<double>();
        var values = new List<double>();
        int line = 0;
        int errors = 0;
        foreach (var content in text.AsSpan().EnumerateLines())
        {
            line++;
            string row = WithoutComment(content).Trim().ToString();
            if (row.Length == 0)
            {
                continue;
            }
            var fields = Fields(row);
            bool isHeader =
                wavelengthsNm.Count == 0 && errors == 0 && !char.IsAsciiDigit(FirstSign(fields[0]));
            if (isHeader)
            {
                continue;
            }
            var place = new Place(line, 1);
            double previousNm = wavelengthsNm.Count > 0 ? wavelengthsNm[^1] : 0;
            if (Problem(fields, previousNm, out double nm, out double value) is { } problem)
            {
                problems.Error(place, problem);
                if (++errors == MostProblems)
                {
                    break;
                }
            }
            // A wrong row still counts as the one before the next, so that one slip is told once.
            if (nm > 0)
            {
                wavelengthsNm.Add(nm);
                values.Add(value);
            }
        }
        if (errors == 0)
        {
            CheckWhole(wavelengthsNm, values, problems);
        }
        return new(
            problems.HasErrors ? null : TabulatedSpectrum.From([.. wavelengthsNm], [.. values]),
            problems.InLineOrder()
        );
    }

    private static ReadOnlySpan<char> WithoutComment(ReadOnlySpan<char> line)
    {
        int comment = line.IndexOf('#');
        return comment < 0 ? line : line[..comment];
    }

    private static char FirstSign(string field) =>
        field.TrimStart('+', '-', '.') is [var first, ..] ? first : ' ';

    // A comma separates only where it yields two columns: '450,5 0,02' is two decimal commas, told as such.
    private static string[] Fields(string row)
    {
        foreach (char separator in ";\t,")
        {
            var fields = row.Split(separator, StringSplitOptions.TrimEntries);
            if (fields.Length == 2 || (fields.Length > 2 && separator != ','))
            {
                return fields;
            }
        }
        return row.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
    }

    private static string? Problem(string[] fields, double previousNm, out double nm, out double value)
    {
        (nm, value) = (0, 0);
        if (fields.Length != 2)
        {
            return SpectrumTexts.Columns(fields.Length);
        }
        if (!NumberText.TryRead(fields[0], out nm))
        {
            return ProblemTexts.NotANumber("wavelength", fields[0], NumberText.Hint(fields[0]), AllowedNm);
        }
        if (!AllowedNm.Contains(nm))
        {
            return SpectrumTexts.Wavelength(nm, AllowedNm);
        }
        if (!NumberText.TryRead(fields[1], out value))
        {
            return ProblemTexts.NotANumber(
                "value",
                fields[1],
                NumberText.Hint(fields[1]),
                NumberRange.AtLeast(0)
            );
        }
        return value < 0 ? ProblemTexts.OutOfRange("value", value, NumberRange.AtLeast(0))
            : nm == previousNm ? SpectrumTexts.Twice(nm)
            : nm < previousNm ? SpectrumTexts.NotRising(nm, previousNm)
            : null;
    }

    private static void CheckWhole(List<double> wavelengthsNm, List<double> values, ProblemList problems)
    {
        if (wavelengthsNm.Count < 2)
        {
            problems.Error(null, SpectrumTexts.TooFewRows(wavelengthsNm.Count));
            return;
        }
        if (values.TrueForAll(v => v == 0))
        {
            problems.Error(null, SpectrumTexts.AllZero);
            return;
        }
        if (wavelengthsNm[0] > SpectrumTexts.LeastCoverNm || wavelengthsNm[^1] < SpectrumTexts.MostCoverNm)
        {
            problems.Warning(null, SpectrumTexts.CutOff(wavelengthsNm[0], wavelengthsNm[^1]));
        }
        double widestNm = Enumerable
            .Range(1, wavelengthsNm.Count - 1)
            .Max(i => wavelengthsNm[i] - wavelengthsNm[i - 1]);
        if (widestNm > SpectrumTexts.CoarseStepNm)
        {
            problems.Warning(null, SpectrumTexts.Coarse(widestNm));
        }
    }
}
