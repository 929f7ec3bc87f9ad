using GlowMix.Documents;
using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>
/// Reads a file of an instrument, or one that a person wrote: encoding, delimiter, decimal mark, header, columns, units and
/// order are found, told in <see cref="TableFindings"/>, and can be overruled by <see cref="ReadingOptions"/>.
/// </summary>
public static class ReadingFile
{
    /// <summary>The longest file that is read, bytes: some 300 000 rows.</summary>
    public const int LongestBytes = 16_000_000;

    private const int FewestRowsOfTable = 5;

    private static readonly string[] OwnKeys =
    [
        "format",
        "material_format",
        "figures_format",
        "calibration_format",
        "readings_format",
    ];

    /// <summary>Reads a file of the disk.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">What the user says of it.</param>
    public static ReadingOutcome Read(string path, ReadingOptions? options = null) =>
        Read(DocumentFile.ReadBytes(path, LongestBytes), options);

    /// <summary>Reads the bytes of a file. Never throws for what they hold.</summary>
    /// <param name="file">What <see cref="DocumentFile.ReadBytes"/> returned.</param>
    /// <param name="options">What the user says of it.</param>
    public static ReadingOutcome Read(FileBytes file, ReadingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(file);
        options ??= ReadingOptions.Found;
        if (file.Problem is { } problem)
        {
            return new(null, null, [problem]);
        }
        var bytes = file.Bytes.Span;
        if (FileSort.OfBytes(bytes) is { } sort)
        {
            return Refused(file.Name, ReadingTexts.NotText(sort));
        }
        var (text, encoding) = TextDecoding.Decode(bytes);
        // Some instruments fill a block of the disk.
        text = text.TrimEnd('\0', '\x1A');
        if (string.IsNullOrWhiteSpace(text.Trim('\0')))
        {
            return Refused(file.Name, ReadingTexts.Empty);
        }
        if (!FileSort.IsText(text))
        {
            return Refused(file.Name, ReadingTexts.Binary(FileSort.FirstBytes(bytes)));
        }
        if (JsonTables.IsJson(text, out var table, out var fault))
        {
            return table is null
                ? Refused(file.Name, ReadingTexts.JsonWithoutTable)
                : OfJson(table, ReadText(table.Text, encoding, file.Name, options));
        }
        // Rows in brackets are a table, whatever breaks off around them.
        var outcome = ReadText(text, encoding, file.Name, options);
        return fault is null || outcome.Problems.IsEmpty
            ? outcome
            : Refused(file.Name, ReadingTexts.JsonWithFault, fault);
    }

    // The table has lines of its own: a place in it is none of the file, but rows are in the same order.
    private static ReadingOutcome OfJson(JsonTable table, ReadingOutcome outcome) =>
        outcome with
        {
            Spectrum = outcome.Spectrum is { } spectrum
                ? spectrum with
                {
                    Findings = spectrum.Findings with { Delimiter = "JSON" },
                }
                : null,
            Decay = outcome.Decay is { } decay
                ? decay with
                {
                    Findings = decay.Findings with { Delimiter = "JSON" },
                }
                : null,
            Problems =
            [
                .. outcome.Problems.Select(p =>
                    p.Place?.Line - table.HeaderLines is > 0 and var row
                        ? p with
                        {
                            Place = null,
                            Text = ReadingTexts.Invariant($"row {row}: {p.Text}"),
                        }
                        : p with
                        {
                            Place = null,
                        }
                ),
            ],
        };

    private static ReadingOutcome ReadText(string text, string encoding, string file, ReadingOptions options)
    {
        text = TypedForms.Plain(text);
        var lines = TextLines.Of(text);
        if (options.Lines is var (first, last) && (first > lines.Count || last < first))
        {
            return Refused(file, ReadingTexts.NoLines(first, last, lines.Count));
        }
        RowRemarks.CutBrackets(text, lines);
        RowRemarks.CutFrom(text, lines);
        RowRemarks.CutEnds(text, lines);
        text = LabelledRows.Plain(text, lines, out string[] names);
        text = DecayNotes.Plain(text, lines);
        if (FormatFinder.Find(text, lines, options) is not { } format)
        {
            return NoTable(text, file);
        }
        CellTable table = CellTable.Of(text, lines, format, names, options.Lines);
        if (table.NumberRows.Count == 0)
        {
            return NoTable(text, file);
        }
        if (table.NumberRows.Count == 1)
        {
            return Refused(file, ReadingTexts.TooFewRows(1), table.PlaceOf(table.NumberRows[0], 0));
        }
        TableColumn[] columns = TableColumn.Of(table);
        if (ColumnFinder.Find(columns, options, out string? problem) is not { } choice)
        {
            return Refused(file, problem!, table.PlaceOf(table.NumberRows[0], 0));
        }
        if (
            Array.Find([choice.Along, choice.Light], c => c.OddMark is not null) is
            { OddMark: { } odd } slipped
        )
        {
            return Refused(
                file,
                ReadingTexts.OddMark(slipped.Told, table.TextAt(odd, slipped.Index)),
                table.PlaceOf(odd, slipped.Index)
            );
        }
        var reader = new RowReader(table, choice, options, file);
        List<ReadRow> rows = reader.Read();
        if (reader.Problems.Count > 0)
        {
            return new(null, null, [.. reader.Problems]);
        }
        if (rows.Count == 0)
        {
            return Refused(file, ReadingTexts.TooFewRows(0), table.PlaceOf(table.NumberRows[0], 0));
        }
        var warnings = new List<Warning>(choice.Warnings);
        FormatWarnings(table, options, warnings);
        if (reader.LeftOut > 0)
        {
            warnings.Add(
                new(
                    "rows_left_out",
                    null,
                    ReadingTexts.Invariant(
                        $"{reader.LeftOut} {(reader.LeftOut == 1 ? "row" : "rows")} left out, for {(reader.LeftOut == 1 ? "it has" : "they have")} no number; the first is line {reader.FirstLeftOutLine}"
                    )
                )
            );
        }
        int otherLine = 0;
        int others = options.Lines is null
            ? table.OtherNumberRows(rows[0].Row, rows[^1].Row, out otherLine)
            : 0;
        // As many rows again are a table of their own.
        if (others >= FewestRowsOfTable && 3 * others >= rows.Count)
        {
            return Refused(
                file,
                ReadingTexts.OtherTable(otherLine, table.LineOf(rows[0].Row), table.LineOf(rows[^1].Row)),
                new(otherLine, 1)
            );
        }
        if (others > 0)
        {
            warnings.Add(
                new(
                    "rows_left_out",
                    null,
                    ReadingTexts.Invariant(
                        $"{others} {(others == 1 ? "line" : "lines")} of numbers above or below the table taken as text; the first is line {otherLine}"
                    )
                )
            );
        }
        TableFindings findings = FindingsOf(table, choice, encoding, rows.Count, reader);
        return choice.Kind == ReadingKind.Spectrum
            ? SpectrumBuilder.Build(rows, choice, table, options, findings, file, warnings)
            : DecayBuilder.Build(rows, choice, table, options, findings, file, warnings);
    }

    private static TableFindings FindingsOf(
        CellTable table,
        ColumnChoice choice,
        string encoding,
        int rows,
        RowReader reader
    ) =>
        new()
        {
            Kind = choice.Kind,
            Encoding = encoding,
            Delimiter = table.Format.DelimiterWord,
            DecimalMark =
                !table.HasFractions ? null
                : table.Format.DecimalMark == ',' ? "comma"
                : "point",
            IsTransposed = table.IsTransposed,
            HeaderLines = table.HeaderLines.Count(l => !string.IsNullOrWhiteSpace(l)),
            FirstLine = table.LineOf(table.NumberRows[0]),
            LastLine = table.LineOf(table.NumberRows[^1]),
            Rows = rows,
            RowsLeftOut = reader.LeftOut,
            Remarks = reader.Remarks,
            Columns = table.Width,
            Along = choice.Along.Told,
            AlongUnit = WavelengthHints.Word(choice.WavelengthUnit),
            Light = choice.Light.Told,
            LightUnit = "",
            Dark = choice.Dark?.Told,
        };

    private static void FormatWarnings(CellTable table, ReadingOptions options, List<Warning> warnings)
    {
        if (table.Format.IsJoined && options.DecimalMark is null)
        {
            warnings.Add(
                new(
                    "commas_guessed",
                    null,
                    "commas are taken both between the columns and as decimal marks; say --decimal point if they only separate"
                )
            );
        }
        else if (
            table is { HasFractions: false, Width: > 2 }
            && table.Format.Delimiter == ','
            && options.DecimalMark is null
        )
        {
            warnings.Add(
                new(
                    "commas_guessed",
                    null,
                    "every comma is taken to separate columns; say --decimal comma if some mark decimals"
                )
            );
        }
        if (table.IsUnfolded)
        {
            warnings.Add(
                new(
                    "pairs_joined",
                    null,
                    "several pairs of wavelength and value stand on a line; taken as one spectrum"
                )
            );
        }
        if (table.HasGroups)
        {
            warnings.Add(
                new(
                    "thousands_guessed",
                    null,
                    $"numbers such as 1{(table.Format.DecimalMark == ',' ? '.' : ',')}234 are taken as thousands; say --decimal {(table.Format.DecimalMark == ',' ? "point" : "comma")} if they are not"
                )
            );
        }
    }

    private static ReadingOutcome NoTable(string text, string file)
    {
        string first = text.TrimStart('\uFEFF').Split('\n', 2)[0];
        foreach (string key in OwnKeys)
        {
            if (
                first.StartsWith(key + ":", StringComparison.Ordinal)
                || text.Contains("\n" + key + ":", StringComparison.Ordinal)
            )
            {
                return Refused(file, ReadingTexts.OwnFile(key));
            }
        }
        return FileSort.OfText(text) is { } sort
            ? Refused(file, ReadingTexts.NotText(sort).Replace(", not text", "", StringComparison.Ordinal))
            : Refused(file, ReadingTexts.NoNumbers);
    }

    private static ReadingOutcome Refused(string file, string text, Place? place = null) =>
        new(null, null, [new(file, place, text)]);
}
