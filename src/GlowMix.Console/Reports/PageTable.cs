using System.Xml.Linq;
using GlowMix.Console.Texts;

namespace GlowMix.Console.Reports;

/// <summary>A table of texts; the first cell of a row is its head.</summary>
internal static class PageTable
{
    /// <summary>All columns but the first stand to the right.</summary>
    public static XElement Of(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string?>> rows) =>
        Of([.. heads.Select((head, i) => new PageBlock.Column(head, i > 0))], rows);

    /// <param name="columns">From the left.</param>
    /// <param name="rows">A cell a column; null is a cell to be filled in by hand.</param>
    public static XElement Of(
        IReadOnlyList<PageBlock.Column> columns,
        IEnumerable<IReadOnlyList<string?>> rows
    ) =>
        Markup.Of(
            "div",
            Markup.With("class", "wide"),
            Markup.Of(
                "table",
                columns.Any(c => c.Head.Length > 0)
                    ? Markup.Of("thead", Markup.Of("tr", columns.Select(HeadOf).ToArray()))
                    : null,
                Markup.Of("tbody", rows.Select(row => RowOf(columns, row)).ToArray())
            )
        );

    private static XElement HeadOf(PageBlock.Column column) =>
        column.Head.Length == 0
            ? Markup.Of("td")
            : Markup.Of("th", Markup.With("scope", "col"), Side(column.IsRight), column.Head);

    private static XElement RowOf(IReadOnlyList<PageBlock.Column> columns, IReadOnlyList<string?> row) =>
        Markup.Of(
            "tr",
            row.Select(
                    (cell, i) =>
                        i == 0 && cell is { Length: > 0 }
                            ? Markup.Of("th", Markup.With("scope", "row"), Side(columns[i].IsRight), cell)
                            : Markup.Of(
                                "td",
                                cell is null ? Markup.With("class", "blank") : Side(columns[i].IsRight),
                                cell ?? "\u00A0"
                            )
                )
                .ToArray()
        );

    private static System.Xml.Linq.XAttribute? Side(bool isRight) =>
        isRight ? Markup.With("class", "right") : null;
}
