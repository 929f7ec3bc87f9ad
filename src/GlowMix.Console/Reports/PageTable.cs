using System.Xml.Linq;

namespace GlowMix.Console.Reports;

/// <summary>A table of texts; the first cell of a row is its head.</summary>
internal static class PageTable
{
    /// <summary>All columns but the first stand to the right.</summary>
    public static XElement Of(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string?>> rows) =>
        Of([.. heads.Select((head, i) => (head, i > 0))], rows);

    /// <param name="columns">Head of each, and whether its cells stand to the right.</param>
    /// <param name="rows">A cell a column; null is a cell to be filled in by hand.</param>
    public static XElement Of(
        IReadOnlyList<(string Head, bool IsRight)> columns,
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

    private static XElement HeadOf((string Head, bool IsRight) column) =>
        column.Head.Length == 0
            ? Markup.Of("td")
            : Markup.Of("th", Markup.With("scope", "col"), Side(column.IsRight), column.Head);

    private static XElement RowOf(
        IReadOnlyList<(string Head, bool IsRight)> columns,
        IReadOnlyList<string?> row
    ) =>
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
