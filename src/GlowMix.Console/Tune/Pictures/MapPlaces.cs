namespace GlowMix.Console.Tune.Pictures;

/// <summary>Where the points of a map stand on the screen: what a click means.</summary>
/// <param name="X">Left edge of the first point.</param>
/// <param name="TopY">Row of the deepest.</param>
/// <param name="CellColumns">Columns of a point.</param>
/// <param name="CellRows">Rows of a point.</param>
/// <param name="AcrossCount">Points across.</param>
/// <param name="UpCount">Points up.</param>
internal readonly record struct MapPlaces(
    int X,
    int TopY,
    int CellColumns,
    int CellRows,
    int AcrossCount,
    int UpCount
)
{
    /// <summary>The point at a cell of the screen; null beside the map.</summary>
    public (int Across, int Up)? At(int x, int y)
    {
        if (CellColumns <= 0 || CellRows <= 0 || x < X || y < TopY)
        {
            return null;
        }
        int across = (x - X) / CellColumns;
        int up = UpCount - 1 - ((y - TopY) / CellRows);
        return across < AcrossCount && up >= 0 ? (across, up) : null;
    }
}
