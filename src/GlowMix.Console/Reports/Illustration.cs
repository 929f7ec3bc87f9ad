using System.Xml.Linq;

namespace GlowMix.Console.Reports;

/// <summary>A drawing with what a reader needs who cannot see it: a text in its place, and the numbers it is drawn from.</summary>
/// <param name="Drawing">The drawing.</param>
/// <param name="Caption">What it shows and what is to be known about it.</param>
/// <param name="Heads">Heads of the table's columns.</param>
/// <param name="Rows">Its rows, a cell a column.</param>
internal sealed record Illustration(
    XElement Drawing,
    string Caption,
    IReadOnlyList<string> Heads,
    IReadOnlyList<IReadOnlyList<string>> Rows
)
{
    /// <summary>As a part of the page.</summary>
    public XElement Element =>
        Markup.Of(
            "figure",
            Drawing,
            Markup.Of("figcaption", Caption),
            Markup.Of("details", Markup.Of("summary", "the numbers"), PageTable.Of(Heads, Rows))
        );
}
