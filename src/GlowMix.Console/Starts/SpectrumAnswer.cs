using GlowMix.Documents;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Console.Starts;

/// <summary>A table of two columns that an answer names.</summary>
internal static class SpectrumAnswer
{
    // A file's lines are the user's to read: a fine spectrometer's thousands are averaged to one a nanometre.
    private const int MostRows = 500;

    /// <summary>The field.</summary>
    public static StartField Field(string description) =>
        new("spectrum", "FILE", description)
        {
            Question = "File of its spectrum (nm, value), empty for none",
        };

    /// <summary>The rows, or the problems; null rows if there are errors or no file was named.</summary>
    public static (IReadOnlyList<(double At, double Value)>? Rows, IReadOnlyList<Problem> Problems) Read(
        StartAnswers answers,
        Func<string, FileText> open
    )
    {
        if (answers.Text("spectrum") is not { } path)
        {
            return (null, []);
        }
        var file = SpectrumFile.Read(open(path));
        return (file.Table is { } table ? RowsOf(table) : null, file.Problems);
    }

    /// <summary>How a table from a file names its source.</summary>
    public static string SourceOf(StartAnswers answers) =>
        $"own reading; {Path.GetFileName(answers.Text("spectrum"))}";

    private static List<(double At, double Value)> RowsOf(TabulatedSpectrum table)
    {
        var rows = new List<(double At, double Value)>();
        for (int i = 0; i < table.Count; i++)
        {
            rows.Add((table.WavelengthsNm[i], table.Values[i]));
        }
        return rows.Count <= MostRows
            ? rows
            :
            [
                .. rows.GroupBy(r => Math.Round(r.At))
                    .Select(g => (g.Key, Math.Round(g.Average(r => r.Value), 6))),
            ];
    }
}
