using System.Xml.Linq;

namespace GlowMix.Console.Reports;

/// <summary>The parts that all drawings are made of.</summary>
internal static class Drawing
{
    /// <summary>A drawing, with a text in its place for those who do not see it.</summary>
    /// <param name="width">Of its own lengths; it is stretched to the page.</param>
    /// <param name="height">Likewise.</param>
    /// <param name="name">What it is.</param>
    /// <param name="inWords">What it shows.</param>
    /// <param name="looks">A class of the style sheet, or nothing.</param>
    /// <param name="parts">What is in it.</param>
    public static XElement Of(
        double width,
        double height,
        string name,
        string inWords,
        string looks,
        params object?[] parts
    ) =>
        Markup.Of(
            "svg",
            Markup.With("viewBox", $"0 0 {Markup.Length(width)} {Markup.Length(height)}"),
            looks.Length > 0 ? Markup.With("class", looks) : null,
            Markup.With("role", "img"),
            Markup.With("aria-label", $"{name}: {inWords}"),
            Markup.Of("title", name),
            Markup.Of("desc", inWords),
            parts
        );

    /// <summary>A straight line.</summary>
    public static XElement Line(double x1, double y1, double x2, double y2, string looks) =>
        Markup.Of(
            "line",
            Markup.With("x1", x1),
            Markup.With("y1", y1),
            Markup.With("x2", x2),
            Markup.With("y2", y2),
            Markup.With("class", looks)
        );

    /// <summary>A box.</summary>
    public static XElement Box(double x, double y, double width, double height, params object?[] looks) =>
        Markup.Of(
            "rect",
            Markup.With("x", x),
            Markup.With("y", y),
            Markup.With("width", width),
            Markup.With("height", height),
            looks
        );

    /// <summary>Letters.</summary>
    /// <param name="x">Where they begin, are centred or end.</param>
    /// <param name="y">Their foot.</param>
    /// <param name="text">What they say.</param>
    /// <param name="looks">'end' or 'middle' among other classes says which; else they begin there.</param>
    public static XElement Letters(double x, double y, string text, string looks = "") =>
        Markup.Of(
            "text",
            Markup.With("x", x),
            Markup.With("y", y),
            looks.Length > 0 ? Markup.With("class", looks) : null,
            text
        );
}
