using System.Globalization;
using System.Text;

namespace GlowMix.Console.Tables;

/// <summary>
/// Rows of comma-separated values as RFC 4180 has them, but with a line feed alone; numbers with a point and every digit.
/// </summary>
internal sealed class CsvText
{
    private readonly StringBuilder text = new();
    private bool rowIsOpen;

    /// <summary>A cell of text.</summary>
    public CsvText Cell(string value)
    {
        Separate();
        if (value.AsSpan().IndexOfAny("\",\r\n") < 0)
        {
            text.Append(value);
        }
        else
        {
            text.Append('"').Append(value.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
        }
        return this;
    }

    /// <summary>A cell with a number; empty where it does not exist.</summary>
    public CsvText Cell(double? value)
    {
        Separate();
        if (value is double number)
        {
            text.Append(CultureInfo.InvariantCulture, $"{number}");
        }
        return this;
    }

    /// <summary>Ends the row.</summary>
    public void EndRow()
    {
        text.Append('\n');
        rowIsOpen = false;
    }

    /// <summary>A row of text.</summary>
    public void Row(params ReadOnlySpan<string> cells)
    {
        foreach (string cell in cells)
        {
            Cell(cell);
        }
        EndRow();
    }

    /// <summary>All rows.</summary>
    public override string ToString() => text.ToString();

    private void Separate()
    {
        if (rowIsOpen)
        {
            text.Append(',');
        }
        rowIsOpen = true;
    }
}
