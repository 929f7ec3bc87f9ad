using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Reports;

/// <summary>
/// Elements of a page and of its drawings. Every text becomes a node of the tree, so that no title or name of a recipe can
/// close an element or begin one.
/// </summary>
internal static class Markup
{
    /// <summary>An element. Texts among its content are cleaned, null is left out.</summary>
    public static XElement Of(string name, params object?[] content) =>
        new(name, content.Select(part => part is string text ? Text(text) : part));

    /// <summary>An attribute.</summary>
    public static XAttribute With(string name, string value) => new(name, Clean(value));

    /// <summary>An attribute that is a length in a drawing, to a hundredth.</summary>
    public static XAttribute With(string name, double value) => new(name, Length(value));

    /// <summary>A length in a drawing, to a hundredth.</summary>
    public static string Length(double value) =>
        (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>The tree as text. An element without content is closed by a tag of its own, as HTML wants it.</summary>
    public static string Written(XElement element)
    {
        foreach (var empty in element.DescendantsAndSelf().Where(e => e.IsEmpty && !IsVoid(e)))
        {
            empty.Add("");
        }
        return element.ToString(SaveOptions.DisableFormatting);
    }

    private static XText Text(string text) => new(Clean(text));

    private static bool IsVoid(XElement element) =>
        element.Name.LocalName is "br" or "hr" or "meta" or "col" or "link" or "img";

    // Control characters, and the few others that no page may hold.
    private static string Clean(string text)
    {
        string line = Letters.OneLine(text, ascii: false);
        return line.All(c => XmlConvert.IsXmlChar(c) || char.IsSurrogate(c))
            ? line
            : string.Concat(line.Select(c => XmlConvert.IsXmlChar(c) || char.IsSurrogate(c) ? c : '?'));
    }
}
