using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace GlowMix.Documents;

/// <summary>How one value is written so that it reads back as the same text.</summary>
public static partial class ScalarText
{
    /// <summary>As it stands where that is safe, else in double quotes.</summary>
    public static string Of(string value) => IsPlain().IsMatch(value) ? value : Quoted(value);

    private static string Quoted(string value)
    {
        var text = new StringBuilder("\"");
        foreach (char c in value)
        {
            switch (c)
            {
                case '"' or '\\':
                    text.Append('\\').Append(c);
                    break;
                case '\n':
                    text.Append("\\n");
                    break;
                case var _ when char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF':
                    text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
                    break;
                default:
                    text.Append(c);
                    break;
            }
        }
        return text.Append('"').ToString();
    }

    // No sign of YAML's own in it, and no blank at an end.
    [GeneratedRegex(@"^[-+.]?[\p{L}\p{N}_./%+]([\p{L}\p{N}_./%+ -]*[\p{L}\p{N}_./%+-])?\z")]
    private static partial Regex IsPlain();
}
