using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Figures in tables: their names in short lines, their values with the digits they are worth.</summary>
internal static class FigureDigits
{
    private const int HeadColumns = 11;

    /// <summary>Whether the figure's low end leads: pigment strength is known to a factor of two.</summary>
    public static bool HasLowEnd(Figure figure) =>
        figure.Name.StartsWith("afterglow.", StringComparison.Ordinal) && figure.Unit is "mcd/m²" or "min";

    /// <summary>A value as text.</summary>
    public static string Text(Figure figure, double? value) =>
        value is not double v ? Digits.None
        : figure.Name.EndsWith("cct_k", StringComparison.Ordinal) ? Digits.Cct(v)
        : figure.Name.EndsWith("duv", StringComparison.Ordinal) ? Digits.Duv(v)
        : HasLowEnd(figure) ? Digits.Two(v)
        : Digits.Significant(v, 3);

    /// <summary>The name as files write it, cut behind dots and underscores into lines of a column's width.</summary>
    public static IEnumerable<string> Head(string name)
    {
        string line = "";
        int start = 0;
        while (start < name.Length)
        {
            int end = name.AsSpan(start).IndexOfAny('.', '_');
            string part = end < 0 ? name[start..] : name[start..(start + end + 1)];
            if (line.Length > 0 && line.Length + part.Length > HeadColumns)
            {
                yield return line;
                line = "";
            }
            line += part;
            start += part.Length;
        }
        yield return line;
    }
}
