namespace GlowMix.Readings;

/// <summary>How a file was understood: everything that was found by itself, so that it can be told and overruled.</summary>
public sealed record TableFindings
{
    /// <summary>Spectrum or decay.</summary>
    public required ReadingKind Kind { get; init; }

    /// <summary>'UTF-8', 'UTF-16', 'Latin-1'.</summary>
    public required string Encoding { get; init; }

    /// <summary>What separates columns, in words: 'semicolons'.</summary>
    public required string Delimiter { get; init; }

    /// <summary>'comma', 'point', or null where no number has a fraction.</summary>
    public required string? DecimalMark { get; init; }

    /// <summary>Wavelengths stand in a row and not in a column.</summary>
    public bool IsTransposed { get; init; }

    /// <summary>Lines above the first row.</summary>
    public required int HeaderLines { get; init; }

    /// <summary>Line of the first row, from 1.</summary>
    public required int FirstLine { get; init; }

    /// <summary>Line of the last row.</summary>
    public required int LastLine { get; init; }

    /// <summary>Rows that were read, before equal ones were merged.</summary>
    public required int Rows { get; init; }

    /// <summary>Rows that say the same as another.</summary>
    public int RowsMerged { get; init; }

    /// <summary>Rows that were left out.</summary>
    public int RowsLeftOut { get; init; }

    /// <summary>Remarks between the rows.</summary>
    public int Remarks { get; init; }

    /// <summary>Number of columns.</summary>
    public required int Columns { get; init; }

    /// <summary>The column of the wavelengths or times.</summary>
    public required ColumnName Along { get; init; }

    /// <summary>Its unit: 'nm', 's'.</summary>
    public required string AlongUnit { get; init; }

    /// <summary>The column of the light.</summary>
    public required ColumnName Light { get; init; }

    /// <summary>Its unit in words: 'counts', 'no unit'.</summary>
    public required string LightUnit { get; init; }

    /// <summary>The column that was taken off as dark, or null.</summary>
    public ColumnName? Dark { get; init; }

    /// <summary>The rows go from long to short wavelengths, or back in time.</summary>
    public bool IsDescending { get; init; }
}
