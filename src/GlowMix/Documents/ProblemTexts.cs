using System.Globalization;

namespace GlowMix.Documents;

/// <summary>The words of the problems any document can have: what is wrong, what is allowed, what to write instead.</summary>
public static class ProblemTexts
{
    // What the parser says of the slips people make, and what to tell them.
    private static readonly (string Reason, string Words)[] slips =
    [
        (
            "found invalid mapping",
            "a second colon in the line, or a wrong indentation; put text with ': ' in quotes"
        ),
        ("Operation is not valid", "a bracket is not closed"),
        ("did not find expected ',' or", "a bracket is not closed"),
        ("quoted scalar, found unexpected end of stream", "a quote is not closed"),
        ("unknown escape character", "in double quotes a backslash is written twice; or use single quotes"),
        ("cannot start any token", "a value cannot begin with this sign; put it in quotes"),
        ("block mapping, did not find expected key", "no 'key: value' in this line, or a wrong indentation"),
        ("did not find expected '-' indicator", "a key beside the items of a list; check the indentation"),
    ];

    /// <summary>The file is not there.</summary>
    public const string NotFound = "no such file";

    /// <summary>The path names a directory.</summary>
    public const string IsADirectory = "is a directory, not a file";

    /// <summary>The system refuses to open the file.</summary>
    public const string NoPermission = "no permission to read the file";

    /// <summary>Nothing but blanks and comments.</summary>
    public const string Empty = "nothing in it; write one 'key: value' a line";

    /// <summary>A second document begins.</summary>
    public const string SeveralDocuments = "a second document begins here ('---'); allowed: one a file";

    /// <summary>An anchor or an alias.</summary>
    public const string Anchor =
        "anchors (&) and aliases (*) are not allowed; write the value out, or put it in quotes";

    /// <summary>A tag.</summary>
    public const string Tag = "tags (!) are not allowed; leave it out, or put the value in quotes";

    /// <summary>A tab in the indentation.</summary>
    public const string Tab = "a tab; indent with spaces";

    /// <summary>A list or mapping as a key, or nothing.</summary>
    public const string KeyIsNotAWord = "a key must be a word";

    /// <summary>A key with a value in square brackets.</summary>
    public const string BarePair =
        "a key in square brackets; write '{key: value}', or one '- key: value' a line";

    /// <summary>Some other failure of the system.</summary>
    public static string CannotBeRead(string reason) => $"cannot be read: {OneLine(reason)}";

    /// <summary>Longer than the limit.</summary>
    public static string TooLong(int longestBytes) =>
        Invariant($"longer than {longestBytes / 1e6} MB ({longestBytes} bytes), the most that is read");

    /// <summary>Not UTF-8.</summary>
    public static string NotUtf8(byte found) =>
        Invariant($"not UTF-8 text (byte 0x{found:X2}); save the file as UTF-8");

    /// <summary>A character that does not print.</summary>
    public static string Character(char found) =>
        Invariant($"the character U+{(int)found:X4} is not allowed");

    /// <summary>The YAML parser's reason, in plain words where it is a usual slip.</summary>
    public static string NotYaml(string reason) => $"not YAML: {InPlainWords(reason)}";

    /// <summary>Too many levels.</summary>
    public static string TooDeep(int deepest) =>
        Invariant($"lists and keys stand more than {deepest} levels deep");

    /// <summary>The file is a list or a single value.</summary>
    public static string RootIsNotAMapping(string what) =>
        $"the file holds {what}; needed: keys with values, one 'key: value' a line, with a blank behind the colon";

    /// <summary>The same key again.</summary>
    public static string DuplicateKey(string key, Place first) =>
        Invariant($"key {Quote(key)} stands twice; first on line {first.Line}");

    /// <summary>A required key is not there.</summary>
    /// <param name="key">The key.</param>
    /// <param name="where">The mapping it belongs to, such as 'layers.glow', or an empty text at the top.</param>
    public static string Missing(string key, string where) =>
        where.Length == 0 ? $"{Quote(key)} is missing" : $"{Quote(key)} is missing in {where}";

    /// <summary>The key is there, its value is not.</summary>
    public static string NoValue(string key) => $"{key} has no value; write one, or leave the key out";

    /// <summary>A list instead of one value, and so on.</summary>
    public static string WrongShape(string key, string found, string needed) =>
        $"{key} is {found}; needed: {needed}";

    /// <summary>A number outside its range.</summary>
    public static string OutOfRange(string key, double found, NumberRange allowed) =>
        Invariant($"{key} is {found}; allowed: {allowed}");

    /// <summary>A number with a fraction where whole ones are counted.</summary>
    public static string NotWhole(string key, double found, NumberRange allowed) =>
        Invariant($"{key} is {found}; needed: a whole number, {allowed}");

    /// <summary>Not a number at all, with a hint if the intention can be seen.</summary>
    public static string NotANumber(string key, string found, string? hint, NumberRange allowed) =>
        $"{key} is {Quote(found)}; {hint ?? $"needed: a number, {allowed}"}";

    /// <summary>A word that is not on the list.</summary>
    public static string NotOneOf(string key, string found, IReadOnlyCollection<string> allowed) =>
        $"{key} is {Quote(found)}; allowed: {string.Join(", ", allowed)}{DidYouMean(found, allowed)}";

    /// <summary>A list with too few or too many items.</summary>
    public static string CountOutOfRange(string key, int found, NumberRange allowed) =>
        Invariant($"{key} has {found} {(found == 1 ? "item" : "items")}; allowed: {allowed}");

    /// <summary>A text with characters that do not print.</summary>
    public static string NotPrintable(string key) => $"{key} holds a character that does not print";

    /// <summary>A text of more than one line.</summary>
    public static string NotOneLine(string key) => $"{key} is longer than one line";

    /// <summary>A key nobody reads, in the unit of a known key.</summary>
    /// <param name="key">The key.</param>
    /// <param name="converted">The line to write instead, such as 'depth_mm: 6.35'.</param>
    public static string UnknownUnit(string key, string converted) =>
        $"unknown key {Quote(key)}; write {converted}";

    /// <summary>A key nobody reads.</summary>
    public static string UnknownKey(string key, IReadOnlyCollection<string> known)
    {
        string nearest = DidYouMean(key, known);
        return $"unknown key {Quote(key)}{(nearest.Length > 0 ? nearest : $"; allowed: {string.Join(", ", known)}")}";
    }

    /// <summary>Two keys that say the same thing.</summary>
    public static string NotBoth(string key, string other) =>
        $"{key} and {other} exclude each other; write one of them";

    /// <summary>A word of the user's in quotes, shortened, on one line.</summary>
    public static string Quote(string word)
    {
        string line = OneLine(word);
        return $"'{(line.Length <= 60 ? line : line[..57] + "...")}'";
    }

    /// <summary>'; did you mean …?', or an empty text if nothing is near.</summary>
    public static string DidYouMean(string found, IEnumerable<string> known) =>
        NearestWord.Of(found, known) is { } nearest ? $"; did you mean '{nearest}'?" : "";

    private static string InPlainWords(string reason) =>
        slips.FirstOrDefault(s => reason.Contains(s.Reason, StringComparison.Ordinal)).Words
        ?? OneLine(reason).TrimEnd('.');

    private static string OneLine(string text) =>
        string.Create(
            text.Length,
            text,
            (line, source) =>
            {
                for (int i = 0; i < line.Length; i++)
                {
                    line[i] = char.IsControl(source[i]) ? ' ' : source[i];
                }
            }
        );

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
