using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>
/// Finds which column holds what: by the user's word, by the header's words, by how the numbers run. Where two fit equally it
/// asks, or takes one and says so.
/// </summary>
internal sealed class ColumnFinder
{
    private readonly TableColumn[] columns;
    private readonly ReadingOptions options;
    private readonly List<Warning> warnings = [];
    private string? problem;

    private ColumnFinder(TableColumn[] columns, ReadingOptions options) =>
        (this.columns, this.options) = (columns, options);

    /// <summary>Finds them.</summary>
    /// <param name="columns">The table's columns.</param>
    /// <param name="options">What the user says.</param>
    /// <param name="problem">Why there is no choice.</param>
    /// <returns>Null if there is a problem.</returns>
    public static ColumnChoice? Find(TableColumn[] columns, ReadingOptions options, out string? problem)
    {
        var finder = new ColumnFinder(columns, options);
        ColumnChoice? choice = finder.Find();
        problem = finder.problem;
        return problem is null ? choice : null;
    }

    private ColumnChoice? Find()
    {
        if (
            Asked(options.AlongColumn) is not var (alongIsAsked, asked)
            || Asked(options.LightColumn) is not var (lightIsAsked, askedLight)
            || Asked(options.DarkColumn) is not var (_, askedDark)
        )
        {
            return null;
        }
        ReadingKind kind = options.Kind ?? KindFinder.Find(columns, asked, warnings);
        TableColumn? along =
            alongIsAsked ? asked
            : kind == ReadingKind.Spectrum ? FindWavelengths(askedLight)
            : FindTimes(askedLight);
        if (along is null)
        {
            problem ??= ReadingTexts.NoWavelengths(columns.Length);
            return null;
        }
        LengthUnit unit = kind == ReadingKind.Spectrum ? UnitOf(along) : LengthUnit.Nanometre;
        var light = new LightColumns(columns, along, kind, warnings);
        TableColumn? value = lightIsAsked ? askedLight : light.Find();
        if (value is null)
        {
            problem ??= Array.Find(columns, c => c.Role is ColumnRole.Logarithm or ColumnRole.Weighted)
                is { } other
                ? ReadingTexts.NoPlainLight(other.Told, other.Role == ColumnRole.Logarithm)
                : ReadingTexts.NoLight;
            return null;
        }
        TableColumn? dark = askedDark ?? (lightIsAsked ? null : light.DarkFor(value));
        if (value == along || value == dark || dark == along)
        {
            problem ??= ReadingTexts.SameColumn(value == dark ? value.Told : along.Told);
        }
        if (kind == ReadingKind.Spectrum && !lightIsAsked && WrappedRows.Are(columns, along))
        {
            problem ??= ReadingTexts.WrappedRows;
        }
        if (Array.Find([along, value, dark ?? value], c => c.IsMixed) is { } mixed)
        {
            problem ??= ReadingTexts.MixedUnits(mixed.Told);
        }
        return new(kind, along, value, dark, unit, warnings);
    }

    // A column by number or name; null, with a problem, where there is none.
    private (bool IsAsked, TableColumn? Column)? Asked(string? word)
    {
        if (word is null)
        {
            return (false, null);
        }
        if (
            int.TryParse(word, System.Globalization.CultureInfo.InvariantCulture, out int number)
            && number >= 1
            && number <= columns.Length
        )
        {
            return (true, columns[number - 1]);
        }
        TableColumn? named =
            Array.Find(columns, c => c.Name.Equals(word, StringComparison.OrdinalIgnoreCase))
            ?? Array.Find(
                columns,
                c => c.Name.Length > 0 && c.Name.Contains(word, StringComparison.OrdinalIgnoreCase)
            );
        if (named is null || word.Length == 0)
        {
            problem ??= ReadingTexts.NoSuchColumn(word, columns.Select(c => c.Told));
            return null;
        }
        return (true, named);
    }

    private TableColumn? FindWavelengths(TableColumn? taken)
    {
        TableColumn[] named =
        [
            .. columns.Where(c => c.Role == ColumnRole.Wavelength && c != taken && c.Numbers.Length > 1),
        ];
        if (named.Length == 1)
        {
            return named[0];
        }
        TableColumn[] fitting =
        [
            .. (named.Length > 1 ? named : columns).Where(c =>
                c != taken
                && c.IsFilled
                && (
                    c.Role is ColumnRole.Wavelength or ColumnRole.Unknown or ColumnRole.Light
                    || (c.Role == ColumnRole.OtherScale && options.WavelengthUnit is not null)
                )
                && c.Sequence.IsOrdered
                && c.UnitBySize is not null
            ),
        ];
        if (
            fitting.Length == 0
            || named.Length == 0 && options.WavelengthUnit is null && OtherScaleOf(fitting) is not null
        )
        {
            return WrongUnit(named.Length > 1 ? named : columns);
        }
        return fitting.Length == 1 ? fitting[0] : TheLikeliest(fitting);
    }

    private TableColumn? TheLikeliest(TableColumn[] fitting)
    {
        // The same wavelengths in nm and µm are no question.
        TableColumn one = fitting[0];
        if (
            fitting.All(c =>
                c == one
                || Math.Abs((ToNm(c) * c.Sequence.Most / (ToNm(one) * one.Sequence.Most)) - 1) < 1e-3
                    && Math.Abs((ToNm(c) * c.Sequence.Least / (ToNm(one) * one.Sequence.Least)) - 1) < 1e-3
            )
        )
        {
            return fitting.MinBy(ToNm);
        }
        // Wavelengths keep an even step, or nearly; counts do not.
        TableColumn[] byStep = [.. fitting.OrderBy(c => c.Sequence.Unevenness)];
        double first = byStep[0].Sequence.Unevenness;
        double second = byStep[1].Sequence.Unevenness;
        if (
            (second > 0.25 && first < second / 3)
            || (second > 0.02 && first < 1e-6 && !byStep[0].IsRunningIndex)
        )
        {
            return byStep[0];
        }
        problem ??= ReadingTexts.SeveralWavelengths(fitting.Select(c => c.Told));
        return null;
    }

    // Frequencies in THz are as large as wavelengths in nm: the name tells them, or their steps.
    private TableColumn? OtherScaleOf(IEnumerable<TableColumn> candidates) =>
        Array.Find(columns, c => c.Role == ColumnRole.OtherScale && c.Sequence.IsOrdered)
        ?? candidates.FirstOrDefault(c => OtherScale.Shown(c) is not null);

    // No column runs over visible wavelengths in nm or µm: say of the likeliest what it may be instead.
    private TableColumn? WrongUnit(IEnumerable<TableColumn> candidates)
    {
        if (OtherScaleOf(candidates.Where(c => c.Role == ColumnRole.Unknown)) is { } other)
        {
            problem ??= ReadingTexts.OtherScale(
                other.Told,
                (OtherScale.Named(other) ?? OtherScale.Shown(other)!).Name
            );
            return null;
        }
        TableColumn? ordered =
            candidates.FirstOrDefault(c => c.Role == ColumnRole.Wavelength && c.Numbers.Length > 1)
            ?? candidates.FirstOrDefault(c =>
                c.Sequence.IsOrdered && c.IsFilled && c.Role != ColumnRole.Index
            )
            ?? candidates.FirstOrDefault(c => c.Sequence.IsOrdered && c.IsFilled);
        if (ordered is not null)
        {
            problem ??= ReadingTexts.WrongUnit(
                ordered.Told,
                ordered.Sequence.Least,
                ordered.Sequence.Most,
                WavelengthHints.For(ordered)
            );
        }
        return null;
    }

    private TableColumn? FindTimes(TableColumn? taken)
    {
        TableColumn[] free = [.. columns.Where(c => c != taken)];
        return Array.Find(free, c => (c.IsClock || c.IsDuration) && c.IsFilled && !c.Sequence.IsConstant)
            ?? Array.Find(free, c => c.Role == ColumnRole.Time && c.IsFilled && !c.Sequence.IsConstant)
            // Without names: times are rounder than readings, and rise.
            ?? free.Where(c => KindFinder.CouldBeTimes(c) && !c.IsRunningIndex)
                .MaxBy(c => (c.Numbers.Count(n => n == Math.Floor(n)), !c.Sequence.IsDescending))
            ?? Array.Find(free, KindFinder.CouldBeTimes);
    }

    private static double ToNm(TableColumn column) =>
        WavelengthHints.NmIn(column.UnitBySize ?? LengthUnit.Nanometre);

    private LengthUnit UnitOf(TableColumn column)
    {
        if (options.WavelengthUnit is { } asked)
        {
            return asked;
        }
        LengthUnit? byMagnitude = column.UnitBySize;
        LengthUnit? byName = HeaderUnits.LengthOf(column.Name) ?? HeaderUnits.LengthOf(column.Unit);
        if (byMagnitude is null && byName is (LengthUnit.Angstrom or LengthUnit.Metre))
        {
            return byName.Value;
        }
        if (byMagnitude is { } unit)
        {
            if (byName is LengthUnit.Nanometre or LengthUnit.Micrometre && byName != unit)
            {
                warnings.Add(
                    new(
                        "wavelength_unit_guessed",
                        null,
                        ReadingTexts.Invariant(
                            $"wavelengths are taken as {WavelengthHints.Word(unit)}, although the header says {WavelengthHints.Word(byName.Value)}; they run from {column.Sequence.Least:0.####} to {column.Sequence.Most:0.####}"
                        )
                    )
                );
            }
            else if (byName is null && unit != LengthUnit.Nanometre)
            {
                warnings.Add(
                    new(
                        "wavelength_unit_guessed",
                        null,
                        ReadingTexts.Invariant(
                            $"wavelengths are taken as {WavelengthHints.Word(unit)}; they run from {column.Sequence.Least:G4} to {column.Sequence.Most:G4}"
                        )
                    )
                );
            }
            return unit;
        }
        problem ??= ReadingTexts.WrongUnit(
            column.Told,
            column.Sequence.Least,
            column.Sequence.Most,
            WavelengthHints.For(column)
        );
        return LengthUnit.Nanometre;
    }
}
