namespace GlowMix.Console.Texts;

/// <summary>A part of a page, without how it is set.</summary>
internal abstract record PageBlock
{
    /// <summary>What the page is.</summary>
    public sealed record Title(string Text) : PageBlock;

    /// <summary>The head of a section.</summary>
    public sealed record Heading(string Text) : PageBlock;

    /// <summary>Some room.</summary>
    public sealed record Space : PageBlock;

    /// <summary>Sentences.</summary>
    public sealed record Paragraph(string Text) : PageBlock;

    /// <summary>Labels, each with what it says; an empty label continues the one above.</summary>
    public sealed record Rows(IReadOnlyList<(string Label, string Text)> Items) : PageBlock;

    /// <summary>Points, one below the other.</summary>
    public sealed record Points(IReadOnlyList<string> Items) : PageBlock;

    /// <summary>Things to fill in by hand, side by side.</summary>
    /// <param name="Items">Label, columns to write in, and the unit behind them.</param>
    public sealed record Blanks(IReadOnlyList<(string Label, int Columns, string Unit)> Items) : PageBlock;

    /// <summary>Rows of cells; a cell of null is filled in by hand.</summary>
    /// <param name="Columns">From the left.</param>
    /// <param name="Cells">By row.</param>
    public sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string?>> Cells)
        : PageBlock;

    /// <summary>A column of a table.</summary>
    /// <param name="Head">Above it; may be empty.</param>
    /// <param name="IsRight">Whether its cells stand to the right.</param>
    public sealed record Column(string Head, bool IsRight);
}
