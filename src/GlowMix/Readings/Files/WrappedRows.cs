namespace GlowMix.Readings.Files;

/// <summary>Lines that hold the first wavelength and then the values from there on, as some programs wrap a spectrum.</summary>
internal static class WrappedRows
{
    private const int FewestValues = 3;
    private const int FewestRows = 5;

    /// <summary>
    /// Whether a table without names is such: from the end of a line to the beginning of the next is a smaller step than from
    /// one beginning to the next. Of spectra side by side both are alike.
    /// </summary>
    /// <param name="columns">All columns.</param>
    /// <param name="along">That of the wavelengths, the first.</param>
    public static bool Are(TableColumn[] columns, TableColumn along)
    {
        const double Smaller = 0.5;
        int rows = along.Numbers.Length;
        if (
            along.Index != 0
            || columns.Length <= FewestValues
            || rows < FewestRows
            || Array.Exists(columns, c => c.Name.Length > 0 || c.Numbers.Length < rows - 1)
        )
        {
            return false;
        }
        double[] first = columns[1].Numbers;
        double[] last = columns[^1].Numbers;
        double onward = 0;
        double down = 0;
        for (int i = 0; i + 1 < Math.Min(last.Length, first.Length); i++)
        {
            onward += Math.Abs(first[i + 1] - last[i]);
            down += Math.Abs(first[i + 1] - first[i]);
        }
        return onward < Smaller * down;
    }
}
