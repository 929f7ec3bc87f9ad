using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>The first key of a file tells what it is.</summary>
internal static class FileKind
{
    /// <summary>First key of a recipe.</summary>
    public const string Recipe = "format";

    /// <summary>First key of a material.</summary>
    public const string Material = "material_format";

    /// <summary>First key of a figures file.</summary>
    public const string Figures = "figures_format";

    /// <summary>First key of a calibration.</summary>
    public const string Calibration = "calibration_format";

    /// <summary>First key of a set of readings.</summary>
    public const string Readings = "readings_format";

    /// <summary>First keys of files that are read.</summary>
    public static IReadOnlyList<string> Known { get; } = [Recipe, Material, Figures, Calibration, Readings];

    /// <summary>
    /// What a file is that a shell's pattern hands over among recipes and that stands beside them by right: 'a figures file';
    /// null for a recipe, and for what ought to be one.
    /// </summary>
    public static string? BesideRecipes(string text) =>
        FirstKey(text) switch
        {
            Figures => "a figures file",
            Calibration => "a calibration",
            Readings => "a set of readings",
            _ => null,
        };

    /// <summary>The first key of a text, without reading the rest of it; null if the text does not begin with one.</summary>
    public static string? FirstKey(string text)
    {
        int start = 0;
        while (start < text.Length)
        {
            int end = start;
            while (end < text.Length && text[end] is not ('\n' or '\r'))
            {
                end++;
            }
            var line = text.AsSpan(start, end - start).TrimStart('\uFEFF').Trim();
            start = end + 1;
            if (line.Length == 0 || line[0] == '#' || line is "---")
            {
                continue;
            }
            int colon = line.IndexOf(':');
            return colon > 0 ? line[..colon].TrimEnd().ToString() : null;
        }
        return null;
    }

    /// <summary>What is wrong with a first key that tells no kind.</summary>
    public static string Unknown(string? key) =>
        key is null
            ? $"the first key tells the kind of a file; allowed: {string.Join(", ", Known)}"
            : $"the first key is {ProblemTexts.Quote(key)}, which tells no kind of file; allowed: {string.Join(", ", Known)}{ProblemTexts.DidYouMean(key, Known)}";
}
