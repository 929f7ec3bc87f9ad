namespace GlowMix.Console.Plots;

/// <summary>Two by four dots a letter, by the Unicode braille patterns.</summary>
internal sealed class BrailleCanvas(int columns, int rows) : Canvas(columns, rows)
{
    private const char Blank = '\u2800';

    // The bits of the pattern, row by row: dots 1 to 6 count down the columns, 7 and 8 were added below.
    private static readonly byte[,] bits =
    {
        { 0x01, 0x08 },
        { 0x02, 0x10 },
        { 0x04, 0x20 },
        { 0x40, 0x80 },
    };

    private readonly byte[,] cells = new byte[rows, columns];

    /// <inheritdoc/>
    public override int DotsWide => Columns * 2;

    /// <inheritdoc/>
    public override int DotsHigh => Rows * 4;

    /// <inheritdoc/>
    public override void Set(int x, int y, LineMark mark)
    {
        if (x >= 0 && x < DotsWide && y >= 0 && y < DotsHigh)
        {
            cells[y / 4, x / 2] |= bits[y % 4, x % 2];
        }
    }

    /// <inheritdoc/>
    public override string Row(int row) =>
        string.Create(
            Columns,
            (cells, row),
            static (letters, source) =>
            {
                for (int i = 0; i < letters.Length; i++)
                {
                    byte dots = source.cells[source.row, i];
                    letters[i] = dots == 0 ? ' ' : (char)(Blank + dots);
                }
            }
        );
}
