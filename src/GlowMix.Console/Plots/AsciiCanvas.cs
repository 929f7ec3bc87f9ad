namespace GlowMix.Console.Plots;

/// <summary>One dot a letter; the curve drawn last stands in front.</summary>
internal sealed class AsciiCanvas : Canvas
{
    private readonly char[][] cells;

    public AsciiCanvas(int columns, int rows)
        : base(columns, rows)
    {
        cells = new char[rows][];
        for (int i = 0; i < rows; i++)
        {
            cells[i] = new string(' ', columns).ToCharArray();
        }
    }

    /// <inheritdoc/>
    public override int DotsWide => Columns;

    /// <inheritdoc/>
    public override int DotsHigh => Rows;

    /// <inheritdoc/>
    public override void Set(int x, int y, LineMark mark)
    {
        if (x >= 0 && x < DotsWide && y >= 0 && y < DotsHigh)
        {
            cells[y][x] = mark.Letter;
        }
    }

    /// <inheritdoc/>
    public override string Row(int row) => new(cells[row]);
}
