namespace GlowMix.Readings.Files;

/// <summary>How a table's numbers and columns are written.</summary>
/// <param name="Delimiter">What separates columns; a blank stands for any run of blanks.</param>
/// <param name="DecimalMark">A point or a comma.</param>
/// <param name="JoinedAt">
/// Where commas both separate and mark decimals: the columns, as split, whose next one holds their decimals. Else empty.
/// </param>
internal sealed record TableFormat(char Delimiter, char DecimalMark, IReadOnlyList<int> JoinedAt)
{
    /// <summary>A format without commas in two roles.</summary>
    public TableFormat(char delimiter, char decimalMark)
        : this(delimiter, decimalMark, []) { }

    /// <summary>Commas separate columns and mark decimals as well.</summary>
    public bool IsJoined => JoinedAt.Count > 0;

    /// <summary>The delimiter in words.</summary>
    public string DelimiterWord => WordOf(Delimiter);

    /// <summary>A delimiter in words.</summary>
    public static string WordOf(char delimiter) =>
        delimiter switch
        {
            '\t' => "tabs",
            ';' => "semicolons",
            ',' => "commas",
            '|' => "bars",
            _ => "blanks",
        };
}
