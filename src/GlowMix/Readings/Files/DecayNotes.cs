using System.Text;
using System.Text.RegularExpressions;

namespace GlowMix.Readings.Files;

/// <summary>Decays written down in words: 'after 2 min: 150 mcd/m²'. All but time and value is written over by blanks.</summary>
internal static partial class DecayNotes
{
    private const int FewestRows = 3;
    private const int LongestLine = 200;

    /// <summary>Writes the words over, where such lines are most of those that hold a number.</summary>
    public static string Plain(string text, List<(int Start, int Length)> lines)
    {
        var found = new List<(int Start, Match Match, string Before)>();
        int withNumber = 0;
        bool hasWords = false;
        foreach (var (start, length) in lines)
        {
            var line = text.AsSpan(start, length);
            if (!line.ContainsAnyInRange('0', '9'))
            {
                continue;
            }
            withNumber++;
            if (length > LongestLine || (withNumber > 20 && found.Count == 0))
            {
                continue;
            }
            Match? match = TellsUnit(line) ? Note().Match(line.ToString()) : null;
            if (match is { Success: true })
            {
                string before = HeaderFold.Of(
                    match.Groups["before"].Value.Trim(' ', '\t', '-', '*', '•', '@', '~')
                );
                found.Add((start, match, before));
                hasWords |=
                    before.Length > 0
                    || match.Groups["between"].Value.Trim(' ', '\t', ',', ';', '|').Length > 0;
            }
        }
        if (found.Count < FewestRows || !hasWords)
        {
            return text;
        }
        // 'charged 5 min at 300 lx' has another word in front.
        var rows = found.GroupBy(f => f.Before).MaxBy(g => g.Count())!;
        if (rows.Count() < FewestRows || 2 * rows.Count() < withNumber)
        {
            return text;
        }
        var plain = new StringBuilder(text);
        foreach (var (start, match, _) in rows)
        {
            foreach (string part in (string[])["before", "between", "after"])
            {
                Group words = match.Groups[part];
                for (int i = 0; i < words.Length; i++)
                {
                    plain[start + words.Index + i] = part == "between" && i == 0 ? '\t' : ' ';
                }
            }
        }
        return plain.ToString();
    }

    // A digit with a letter behind it that may begin a unit of time.
    private static bool TellsUnit(ReadOnlySpan<char> line)
    {
        for (int i = line.IndexOfAnyInRange('0', '9'); i + 1 < line.Length; i++)
        {
            int next = i + (line[i + 1] == ' ' && i + 2 < line.Length ? 2 : 1);
            if (char.IsAsciiDigit(line[i]) && char.IsLetter(line[next]) && line[next] is not ('e' or 'E'))
            {
                return true;
            }
        }
        return false;
    }

    [GeneratedRegex(
        @"^(?<before>\D*?)(?<time>\d+(?:[.,]\d+)?\s?(?:h|hrs?|hours?|std|stunden?|heures?|horas?|ore|min|mins|minutes?|minuten?|minutos?|minuti|s|secs?|seconds?|sek|sekunden?|secondes?|segundos?|secondi|мин|сек|с|ч|分|秒|分钟|小时)\.?(?!\p{L})(?:\s?\d+\s?(?:min|s|sec)(?!\p{L})){0,2})(?<between>[^\d\r\n]*?[^\d\r\n.,+-])(?<value>[-+]?\d+(?:[.,]\d+)?(?:[eE][-+]?\d+)?\s?(?:[mµuk]?cd ?/ ?m(?:2|²|\^2)|[mk]?lx|[mk]?lux|nits?|%|units?)?)(?<after>[^\d\r\n]*)$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Note();
}
