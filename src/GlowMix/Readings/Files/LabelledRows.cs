using System.Text;
using System.Text.RegularExpressions;

namespace GlowMix.Readings.Files;

/// <summary>
/// Rows whose numbers each have a name in front: 'wavelength: 380, power: 0.1' or 'nm=380 E=0.1'. The names are written over by
/// blanks and told once.
/// </summary>
internal static partial class LabelledRows
{
    private const int FewestRows = 3;
    private const int LongestLine = 400;

    /// <summary>Writes the names over.</summary>
    /// <param name="text">The text.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="names">The names, in the order of the columns; empty where no rows have any.</param>
    public static string Plain(string text, List<(int Start, int Length)> lines, out string[] names)
    {
        names = [];
        if (!text.Contains('=') && !text.Contains(':'))
        {
            return text;
        }
        var found = new List<(int Start, Match Match, string Names)>();
        foreach (var (start, length) in lines)
        {
            if (length <= LongestLine && HasTwoMarks(text.AsSpan(start, length)))
            {
                Match match = Row().Match(text.Substring(start, length));
                if (match.Success)
                {
                    string all = string.Join('\t', match.Groups["name"].Captures.Select(c => c.Value.Trim()));
                    found.Add((start, match, all));
                }
            }
        }
        if (found.Count < FewestRows)
        {
            return text;
        }
        var commonest = found.GroupBy(f => f.Names).MaxBy(g => g.Count())!;
        if (commonest.Count() < FewestRows)
        {
            return text;
        }
        names = commonest.Key.Split('\t');
        var plain = new StringBuilder(text);
        foreach (var (start, match, _) in commonest)
        {
            for (int i = 0; i < match.Length; i++)
            {
                plain[start + i] = ' ';
            }
            foreach (Capture value in match.Groups["value"].Captures)
            {
                if (value != match.Groups["value"].Captures[0])
                {
                    plain[start + value.Index - 1] = '\t';
                }
                for (int i = 0; i < value.Length; i++)
                {
                    plain[start + value.Index + i] = value.Value[i];
                }
            }
        }
        return plain.ToString();
    }

    private static bool HasTwoMarks(ReadOnlySpan<char> line)
    {
        int first = line.IndexOfAny('=', ':');
        return first > 0 && line[(first + 1)..].ContainsAny('=', ':');
    }

    [GeneratedRegex(
        @"^[ \t>*•-]*(?:""?(?<name>[\p{L}_λ][^:=;,\t""]{0,40}?)""?[ \t]*[:=][ \t]*(?<value>[-+−]?(?:\d+(?:[.,]\d+)*|[.,]\d+)(?:[eE][-+]?\d+)?(?: ?(?![eE]\d)[^\s\d:=;,]{1,8}(?:[23²]?/[^\s:=;,]{1,8})?(?![^\s;,]))?)(?:[ \t]*[,;|/][ \t]*|[ \t]+|$)){2,}$"
    )]
    private static partial Regex Row();
}
