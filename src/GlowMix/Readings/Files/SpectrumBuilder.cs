using GlowMix.Documents;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Files;

/// <summary>Makes a spectral reading of the rows of a table.</summary>
internal static class SpectrumBuilder
{
    private const double VisibleFromNm = 380;
    private const double VisibleToNm = 780;

    // The top of converters of 8 bits; greater whole numbers, or any this great, are counts and no power.
    private const double LeastWholeCounts = 255;
    private const double LeastCounts = 1500;

    /// <summary>Makes the reading.</summary>
    /// <param name="rows">The rows as written.</param>
    /// <param name="choice">What their columns are.</param>
    /// <param name="table">The table, for places and the header.</param>
    /// <param name="options">What the user says.</param>
    /// <param name="findings">How the table was found, to be completed.</param>
    /// <param name="file">The file's name.</param>
    /// <param name="warnings">What was found so far.</param>
    public static ReadingOutcome Build(
        List<ReadRow> rows,
        ColumnChoice choice,
        CellTable table,
        ReadingOptions options,
        TableFindings findings,
        string file,
        List<Warning> warnings
    )
    {
        var (unit, unitIsGuessed) = UnitOf(rows, choice, table, options);
        double nmPerUnit = WavelengthHints.NmIn(choice.WavelengthUnit);
        var raw = new List<(double Nm, double Value, int Row)>(rows.Count);
        foreach (ReadRow row in rows)
        {
            double nm = row.Along * nmPerUnit;
            // Sums of decimal steps in µm or Å must not become 450.00000000000006 nm.
            nm = choice.WavelengthUnit == LengthUnit.Nanometre ? nm : Math.Round(nm, 9);
            double value = unit.Factor * (row.Light - row.Dark);
            raw.Add((nm, unit.IsPhotons && nm > 0 ? value / nm : value, row.Row));
        }
        SpectrumRows sorted = SpectrumRows.Of(raw, table, options, file);
        warnings.AddRange(sorted.Warnings);
        Problem? problem = sorted.Problem ?? Check(sorted.Rows, table, unit, file, options, warnings);
        if (problem is not null)
        {
            return new(null, null, [problem]);
        }
        if (unitIsGuessed)
        {
            warnings.Add(
                new(
                    "unit_guessed",
                    null,
                    "taken as raw counts; the values are large and have no unit, say --unit relative if they are power"
                )
            );
        }
        var nms = new double[sorted.Rows.Count];
        var values = new double[nms.Length];
        for (int i = 0; i < nms.Length; i++)
        {
            (nms[i], values[i], _) = sorted.Rows[i];
        }
        return new(
            new SpectralReading
            {
                File = file,
                Spectrum = TabulatedSpectrum.From(nms, values),
                Unit = unit.Unit,
                IsCorrected = options.IsCorrected,
                FlatTops = [.. FlatTopsOf(rows, nmPerUnit)],
                Warnings = [.. warnings],
                Findings = findings with
                {
                    LightUnit = unit.Word,
                    IsDescending = sorted.IsDescending,
                    RowsMerged = sorted.Merged,
                    RowsLeftOut = findings.RowsLeftOut + sorted.Strays,
                },
            },
            null,
            []
        );
    }

    /// <summary>Three or more neighbours at the very top, or two at that of a converter.</summary>
    private static IEnumerable<WavelengthRange> FlatTopsOf(List<ReadRow> rows, double nmPerUnit)
    {
        double top = rows.Max(r => r.Light);
        int needed = top is 255 or 1023 or 4095 or 16383 or 65535 ? 2 : 3;
        int start = 0;
        while (start < rows.Count)
        {
            int end = start;
            while (end < rows.Count && rows[end].Light == top)
            {
                end++;
            }
            if (end - start >= needed)
            {
                double first = rows[start].Along * nmPerUnit;
                double last = rows[end - 1].Along * nmPerUnit;
                yield return new(Math.Min(first, last), Math.Max(first, last));
            }
            start = Math.Max(end, start + 1);
        }
    }

    private static (LightUnit Unit, bool IsGuessed) UnitOf(
        List<ReadRow> rows,
        ColumnChoice choice,
        CellTable table,
        ReadingOptions options
    )
    {
        LightUnit? found =
            LightUnits.Of(choice.Light.Name) ?? LightUnits.Of(choice.Light.Unit) ?? FromHeader(table);
        if (options.SpectralUnit is { } asked)
        {
            string word = asked switch
            {
                SpectralUnit.Counts => "counts",
                SpectralUnit.WPerM2Nm => "W/m²/nm",
                _ => "relative",
            };
            bool isFound = found?.Unit == asked && options.LightFactor is null;
            return (isFound ? found! : new(word, asked, options.LightFactor ?? 1), false);
        }
        if (found is not null)
        {
            return (found, false);
        }
        bool areWhole = rows.TrueForAll(r => r.Light == Math.Floor(r.Light));
        double largest = rows.Count == 0 ? 0 : rows.Max(r => r.Light);
        bool areCounts =
            choice.Light.Role == ColumnRole.Raw
            || (areWhole && largest >= LeastWholeCounts)
            || largest >= LeastCounts;
        return areCounts
            ? (new("counts", SpectralUnit.Counts, 1), true)
            : (new("no unit", SpectralUnit.Relative, 1), false);
    }

    // A line of its own above the table: 'Units: µW/cm²/nm'. Counts and shares only where it speaks of units.
    private static LightUnit? FromHeader(CellTable table)
    {
        for (int i = table.HeaderLines.Count - 1; i >= 0; i--)
        {
            string line = table.HeaderLines[i];
            // 'total: 3.2 W/m²' is none of theirs.
            LightUnit? unit = LightUnits.HoldsNumber(line) ? null : LightUnits.Of(line);
            if (
                unit is { Unit: SpectralUnit.WPerM2Nm }
                || unit is not null
                    && (
                        line.Contains("unit", StringComparison.OrdinalIgnoreCase)
                        || line.Contains("einheit", StringComparison.OrdinalIgnoreCase)
                        || line.Contains("axis", StringComparison.OrdinalIgnoreCase)
                        || line.Contains("mode", StringComparison.OrdinalIgnoreCase)
                    )
            )
            {
                return unit;
            }
        }
        return null;
    }

    private static Problem? Check(
        IReadOnlyList<(double Nm, double Value, int Row)> rows,
        CellTable table,
        LightUnit unit,
        string file,
        ReadingOptions options,
        List<Warning> warnings
    )
    {
        int visible = 0;
        var top = rows[0] with { Value = double.NegativeInfinity };
        var bottom = rows[0] with { Value = double.PositiveInfinity };
        foreach (var row in rows)
        {
            if (row.Nm is >= VisibleFromNm and <= VisibleToNm)
            {
                visible++;
                top = row.Value > top.Value ? row : top;
                bottom = row.Value < bottom.Value ? row : bottom;
            }
        }
        if (visible < 2)
        {
            return new(file, null, ReadingTexts.NothingVisible(rows[0].Nm, rows[^1].Nm));
        }
        if (options.IsDark)
        {
            return null;
        }
        if (top.Value == 0 && bottom.Value == 0)
        {
            return new(file, null, ReadingTexts.AllZero);
        }
        if (-bottom.Value > top.Value)
        {
            return new(
                file,
                table.PlaceOf(bottom.Row, 0),
                ReadingTexts.NegativePeak(bottom.Value, bottom.Nm)
            );
        }
        if (top.Value == bottom.Value)
        {
            bool areCounts =
                unit.Unit == SpectralUnit.Counts
                || (top.Value >= LeastWholeCounts && top.Value == Math.Floor(top.Value));
            if (areCounts)
            {
                return new(file, table.PlaceOf(top.Row, 0), ReadingTexts.SaturatedEverywhere(top.Value));
            }
            warnings.Add(new("flat", null, "every value is the same; is this the column of the light?"));
        }
        return null;
    }
}
