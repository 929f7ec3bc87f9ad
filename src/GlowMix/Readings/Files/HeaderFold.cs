using System.Collections.Frozen;
using System.Text;

namespace GlowMix.Readings.Files;

/// <summary>
/// Words of a header without what typing changes: small letters, Latin and Greek ones without accents, full-width ones narrow.
/// </summary>
/// <remarks>By a table of its own: the framework folds nothing where it runs without a culture's data.</remarks>
internal static class HeaderFold
{
    private static readonly FrozenDictionary<char, char> Plain = Letters(
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
            folded.Append(
                Plain.TryGetValue(small, out char plain) ? plain
                : small is '’' or '´' or '`' ? '\''
                : small == '_' || NumberCell.IsBlank(small) ? ' '
                : small
            );
        }
        return folded.ToString();
    }

    private static FrozenDictionary<char, char> Letters(params string[] lines) =>
        string.Join('|', lines)
            .Split('|')
            .SelectMany(group => group.Skip(1).Select(letter => KeyValuePair.Create(letter, group[0])))
            .ToFrozenDictionary();
}
