using System.Text;

namespace GlowMix.Readings.Files;

/// <summary>
/// Words of a header without what typing changes: small letters, Latin and Greek ones without accents, full-width ones narrow.
/// </summary>
/// <remarks>By a table of its own: the framework folds nothing where it runs without a culture's data.</remarks>
internal static class HeaderFold
{
    // By letter: what it is without its accents; 0 for itself.
    private static readonly char[] Plain = Letters(
        "aàáâãäåāăąạảấầẩẫậắằẳẵặ|cçćčĉċ|dďđ|eèéêëēĕėęěẹẻẽếềểễệ|gğģĝġ|hĥħ|iìíîïĩīĭįıỉị|jĵ|kķ|lĺļľł|nñńņňŋ|oòóôõöøōŏőọỏốồổỗộớờởỡợơ|rŕŗř",
        "sśŝşšș|tţťțŧ|uùúûüũūŭůűųụủứừửữựư|wŵ|yýÿŷỳỵỷỹ|zźżž|αά|εέ|ηή|ιίϊΐ|οό|υύϋΰ|ωώ|σς|её|иї"
    );

    /// <summary>The folded text.</summary>
    public static string Of(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (char c in text.Trim())
        {
            char small = char.ToLowerInvariant(c is >= '！' and <= '～' ? (char)(c - '！' + '!') : c);
            char plain = small < Plain.Length ? Plain[small] : '\0';
            folded.Append(
                plain != '\0' ? plain
                : small is '’' or '´' or '`' ? '\''
                : small == '_' || NumberCell.IsBlank(small) ? ' '
                : small
            );
        }
        return folded.ToString();
    }

    private static char[] Letters(params string[] lines)
    {
        const int AfterVietnamese = 0x1F00;
        var plain = new char[AfterVietnamese];
        foreach (string line in lines)
        {
            foreach (string group in line.Split('|'))
            {
                foreach (char letter in group.AsSpan(1))
                {
                    plain[letter] = group[0];
                }
            }
        }
        return plain;
    }
}
