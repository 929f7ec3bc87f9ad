using System.Xml.Linq;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Reports;

/// <summary>Sets a page of the texts, such as a batch sheet, as a part of a report.</summary>
internal static class PageMarkup
{
    /// <summary>Its blocks; the page's title and headings one step below those of the report.</summary>
    public static IEnumerable<XElement> Of(IEnumerable<PageBlock> page) => page.Select(Of).OfType<XElement>();

    /// <summary>Labels, each with what it says; an empty label continues the one above.</summary>
    public static XElement Rows(IEnumerable<(string Label, string Text)> rows)
    {
        var list = Markup.Of("dl");
        foreach (var (label, text) in rows)
        {
            if (label.Length > 0)
            {
                list.Add(Markup.Of("dt", label));
            }
            list.Add(Markup.Of("dd", text));
        }
        return list;
    }

    /// <summary>Points, one below the other.</summary>
    public static XElement Points(IEnumerable<string> points) =>
        Markup.Of("ul", points.Select(point => Markup.Of("li", point)).ToArray());

    private static XElement? Of(PageBlock block) =>
        block switch
        {
            PageBlock.Title title => Markup.Of("h3", title.Text),
            PageBlock.Heading heading => Markup.Of("h4", heading.Text),
            PageBlock.Paragraph paragraph => Markup.Of("p", paragraph.Text),
            PageBlock.Rows { Items.Count: > 0 } rows => Rows(rows.Items),
            PageBlock.Points points => Points(points.Items),
            PageBlock.Blanks blanks => Markup.Of(
                "p",
                Markup.With("class", "blanks"),
                blanks
                    .Items.Select(item =>
                        Markup.Of(
                            "span",
                            item.Label,
                            Markup.Of(
                                "span",
                                Markup.With("class", "blank"),
                                new string('\u00A0', 2 * item.Columns)
                            ),
                            item.Unit
                        )
                    )
                    .ToArray()
            ),
            PageBlock.Table table => PageTable.Of(table.Columns, table.Cells),
            _ => null,
        };
}
