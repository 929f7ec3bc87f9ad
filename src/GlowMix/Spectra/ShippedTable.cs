using System.Globalization;
using System.Text;

namespace GlowMix.Spectra;

/// <summary>
/// A table of numbers of data/, which travels in the assembly: lines that begin with # (what it is, from where), a line of
/// column names, rows of numbers.
/// </summary>
/// <remarks>
/// Split by hand: these few shipped files have no quotes and no empty cells, and a command that needs four of them must
/// start in milliseconds, which a CSV library alone takes.
/// </remarks>
internal sealed class ShippedTable
{
    private readonly string file;
    private readonly string[] names;
    private readonly double[][] columns;

    private ShippedTable(string file, string[] names, double[][] columns) =>
        (this.file, this.names, this.columns) = (file, names, columns);

    /// <summary>Column names, as in the file.</summary>
    public IReadOnlyList<string> Names => names;

    /// <summary>Number of rows.</summary>
    public int Count => columns[0].Length;

    /// <summary>A column by its name.</summary>
    public ReadOnlySpan<double> this[string column] => columns[IndexOf(column)];

    /// <summary>A column by its name over the table's wavelengths.</summary>
    public TabulatedSpectrum Spectrum(string column) =>
        TabulatedSpectrum.From(this["wavelength_nm"], this[column]);

    /// <summary>Reads a table.</summary>
    /// <param name="file">Path below data/, without its ending .csv.</param>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static ShippedTable Read(string file) =>
        Find(file)
        ?? throw new InvalidOperationException($"data/{file}.csv does not travel in the assembly.");

    /// <summary>Reads a table; null if there is none.</summary>
    /// <param name="file">Path below data/, without its ending .csv.</param>
    public static ShippedTable? Find(string file)
    {
        using Stream? stream = typeof(ShippedTable).Assembly.GetManifestResourceStream($"data/{file}.csv");
        if (stream is null)
        {
            return null;
        }
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        ReadOnlySpan<byte> text = bytes;
        ReadOnlySpan<byte> line = NextLine(ref text);
        while (line[0] == (byte)'#')
        {
            line = NextLine(ref text);
        }
        string[] names = Encoding.UTF8.GetString(line).Split(',');
        var columns = new double[names.Length][];
        int rows = text.Count((byte)'\n');
        for (int column = 0; column < columns.Length; column++)
        {
            columns[column] = new double[rows];
        }
        for (int row = 0; row < rows; row++)
        {
            line = NextLine(ref text);
            for (int column = 0; column < columns.Length; column++)
            {
                int comma = line.IndexOf((byte)',');
                ReadOnlySpan<byte> cell = comma < 0 ? line : line[..comma];
                columns[column][row] = double.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture);
                line = comma < 0 ? [] : line[(comma + 1)..];
            }
        }
        return new(file, names, columns);
    }

    private int IndexOf(string column)
    {
        int index = Array.IndexOf(names, column);
        return index >= 0 ? index : throw new ArgumentException($"{file}.csv has no column '{column}'.");
    }

    private static ReadOnlySpan<byte> NextLine(ref ReadOnlySpan<byte> text)
    {
        int end = text.IndexOf((byte)'\n');
        ReadOnlySpan<byte> line = text[..end];
        text = text[(end + 1)..];
        return line;
    }
}
