using GlowMix.Documents;
using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>Makes a decay reading of the rows of a table.</summary>
internal sealed class DecayBuilder
{
    private const double MinutesPerDay = 1440;
    private const double SecondsPerMinute = 60;
    private const double MinutesPerHour = 60;

    private readonly ColumnChoice choice;
    private readonly CellTable table;
    private readonly ReadingOptions options;
    private readonly string file;
    private readonly List<Warning> warnings;

    private DecayBuilder(
        ColumnChoice choice,
        CellTable table,
        ReadingOptions options,
        string file,
        List<Warning> warnings
    ) =>
        (this.choice, this.table, this.options, this.file, this.warnings) = (
            choice,
            table,
            options,
            file,
            warnings
        );

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
    ) => new DecayBuilder(choice, table, options, file, warnings).Build(rows, findings);

    private ReadingOutcome Build(List<ReadRow> rows, TableFindings findings)
    {
        if (rows.Count < 2)
        {
            return Refused(null, ReadingTexts.TooFewRows(rows.Count));
        }
        var (toMinutes, timeWord) = new DecayTimes(choice, table, options, warnings).ScaleOf(rows);
        var (unit, factor) = LightScale();
        var points = new List<(double Minutes, double Value, int Row)>(rows.Count);
        double days = 0;
        double before = double.NegativeInfinity;
        foreach (ReadRow row in rows)
        {
            double minutes = (row.Along * toMinutes) + days;
            if (choice.Along.IsClock && minutes < before - (MinutesPerDay / 2))
            {
                // Past midnight.
                days += MinutesPerDay;
                minutes += MinutesPerDay;
            }
            before = minutes;
            points.Add((minutes, factor * row.Light, row.Row));
        }
        if (SecondRun(points) is { } second)
        {
            return Refused(
                table.PlaceOf(points[second].Row, 0),
                ReadingTexts.SecondRun(table.LineOf(points[0].Row), table.LineOf(points[second - 1].Row))
            );
        }
        bool isDescending = points[^1].Minutes < points[0].Minutes;
        points = [.. points.OrderBy(p => p.Minutes)];
        double step = factor * (options.DisplayStep ?? StepOfDigits());
        double start = options.DarkFromMinutes ?? FoundStart(points, step);
        points = [.. points.Select(p => (p.Minutes - start, p.Value, p.Row))];
        if (points.TrueForAll(p => p.Value == 0))
        {
            return Refused(null, ReadingTexts.AllZero);
        }
        if (Growth(points, step) is { } growth)
        {
            return Refused(
                table.PlaceOf(growth.Row, choice.Light.Index),
                ReadingTexts.Grows(growth.Minutes, growth.Value, growth.First)
            );
        }
        return new(
            null,
            new DecayReading
            {
                File = file,
                Minutes = [.. points.Select(p => p.Minutes)],
                Values = [.. points.Select(p => p.Value)],
                Unit = unit,
                DisplayStep = step,
                Warnings = [.. warnings],
                Findings = findings with
                {
                    AlongUnit = timeWord,
                    LightUnit = unit switch
                    {
                        DecayUnit.McdPerM2 => "mcd/m²",
                        DecayUnit.Lux => "lx",
                        _ => "no unit",
                    },
                    IsDescending = isDescending,
                },
            },
            []
        );
    }

    private (DecayUnit Unit, double Factor) LightScale()
    {
        var found = HeaderUnits.DecayOf(choice.Light.Name) ?? HeaderUnits.DecayOf(choice.Light.Unit);
        for (int i = table.HeaderLines.Count - 1; i >= 0 && found is null; i--)
        {
            // 'charged at 1000 lx' is no unit of the readings.
            string line = table.HeaderLines[i];
            found = LightUnits.HoldsNumber(line) ? null : HeaderUnits.DecayOf(line);
        }
        if (options.DecayUnit is { } asked)
        {
            return found?.Unit == asked && options.LightFactor is null
                ? found.Value
                : (asked, options.LightFactor ?? 1);
        }
        if (found is null)
        {
            warnings.Add(
                new(
                    "unit_guessed",
                    null,
                    "taken as relative brightness; no unit is told, say --unit mcd, cd or lux"
                )
            );
        }
        return found ?? (DecayUnit.Relative, 1);
    }

    /// <summary>When the light went off: where a level reading falls to a third or less at once; else as the file counts.</summary>
    private double FoundStart(List<(double Minutes, double Value, int Row)> points, double displayStep)
    {
        // A few steps of the display are level and fall to a third by rounding alone.
        const double LeastSteps = 20;
        const double Fall = 3;
        const double Level = 1.2;
        for (int i = 1; i + 2 < points.Count; i++)
        {
            double most = points.Take(i + 1).Max(p => p.Value);
            double least = points.Take(i + 1).Min(p => p.Value);
            if (least <= LeastSteps * displayStep || most > Level * least)
            {
                break;
            }
            if (points[i + 1].Value * Fall < least)
            {
                warnings.Add(
                    new(
                        "dark_start_guessed",
                        null,
                        ReadingTexts.Invariant(
                            $"the light is taken to go off at {Written(points[i].Minutes)}, line {table.LineOf(points[i].Row)}; there the reading falls at once, say --dark-from if it was later"
                        )
                    )
                );
                return points[i].Minutes;
            }
        }
        double span = points[^1].Minutes - points[0].Minutes;
        if (
            (choice.Along.IsClock && points[0].Minutes >= MinutesPerHour)
            || (!choice.Along.IsDuration && points[0].Minutes > Math.Max(MinutesPerDay, 10 * span))
        )
        {
            warnings.Add(
                new(
                    "dark_start_guessed",
                    null,
                    "the light is taken to go off at the first time; the times are those of a clock, say --dark-from"
                )
            );
            return points[0].Minutes;
        }
        return 0;
    }

    // Times that begin again once or twice, over those that were there, with other values.
    private static int? SecondRun(List<(double Minutes, double Value, int Row)> points)
    {
        const int FewestRows = 3;
        int[] resets =
        [
            .. Enumerable.Range(1, points.Count - 1).Where(i => points[i].Minutes < points[i - 1].Minutes),
        ];
        return
            resets is [var at, ..]
            && at >= FewestRows
            && points.Count - at >= FewestRows
            && resets.Length * FewestRows < points.Count
            && points[at].Minutes <= points[at / 2].Minutes
            ? at
            : null;
    }

    private string Written(double minutes)
    {
        if (!choice.Along.IsClock)
        {
            return ReadingTexts.Invariant($"{minutes:0.###} min");
        }
        double seconds = Math.Round(minutes * SecondsPerMinute, 3);
        int hours = (int)(seconds / 3600);
        int whole = (int)(seconds / SecondsPerMinute) - (hours * 60);
        return ReadingTexts.Invariant($"{hours}:{whole:00}:{seconds % SecondsPerMinute:00.###}");
    }

    // One digit of the last place that any value shows; powers of ten show none.
    private double StepOfDigits()
    {
        int decimals = 0;
        foreach (int row in table.NumberRows)
        {
            string cell = table.TextAt(row, choice.Light.Index);
            if (cell.Contains('e', StringComparison.OrdinalIgnoreCase))
            {
                return 0;
            }
            int mark = cell.LastIndexOf(table.Format.DecimalMark);
            int shown = mark < 0 ? 0 : cell.Skip(mark + 1).TakeWhile(char.IsAsciiDigit).Count();
            decimals = Math.Max(decimals, shown);
        }
        return Math.Pow(10, -decimals);
    }

    private static (double Minutes, double Value, double First, int Row)? Growth(
        List<(double Minutes, double Value, int Row)> points,
        double step
    )
    {
        var dark = points.Where(p => p.Minutes > 0).ToArray();
        if (dark.Length < 2)
        {
            return null;
        }
        var (minutes, value, row) = dark[^1];
        double first = dark[0].Value;
        return value > (1.1 * first) + (2 * step) ? (minutes, value, first, row) : null;
    }

    private ReadingOutcome Refused(Place? place, string text) => new(null, null, [new(file, place, text)]);
}
