namespace GlowMix.Console.Tune.Pictures;

/// <summary>A part of the screen, in cells from the top left.</summary>
internal readonly record struct Area(int X, int Y, int Columns, int Rows)
{
    /// <summary>Nothing in it.</summary>
    public bool IsEmpty => Columns <= 0 || Rows <= 0;

    /// <summary>Whether a cell of the screen lies in it.</summary>
    public bool Contains(int x, int y) => x >= X && x < X + Columns && y >= Y && y < Y + Rows;

    /// <summary>Rows from one of its own onwards, at most so many.</summary>
    public Area From(int row, int rows = int.MaxValue) =>
        this with
        {
            Y = Y + row,
            Rows = Math.Max(0, Math.Min(rows, Rows - row)),
        };

    /// <summary>Without so many columns at both sides.</summary>
    public Area Narrower(int columns) => this with { X = X + columns, Columns = Columns - (2 * columns) };
}
