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
        ReadingKind kind = options.Kind ?? KindFound(asked);
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
            problem ??= ReadingTexts.NoLight;
            return null;
        }
        TableColumn? dark = askedDark ?? (lightIsAsked ? null : light.DarkFor(value));
        if (value == along || value == dark || dark == along)
        {
            problem ??= ReadingTexts.SameColumn(value == dark ? value.Told : along.Told);
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

    private ReadingKind KindFound(TableColumn? asked)
    {
        if (asked is not null)
        {
            return asked.IsClock || asked.Role == ColumnRole.Time ? ReadingKind.Decay : ReadingKind.Spectrum;
        }
        // Wavenumbers and Å without a word are refused as wavelengths, and not taken for times.
        if (
            Array.Exists(
                columns,
                c =>
                    c.Role == ColumnRole.Wavelength
                    || HeaderUnits.IsWavenumber(c.Name)
                    || (
                        c.Role == ColumnRole.Unknown
                        && c.Sequence is { IsOrdered: true, Unevenness: < 1e-6 }
                        && WavelengthHints.CouldBeAngstrom(c.Sequence)
                    )
            )
        )
        {
            return ReadingKind.Spectrum;
        }
        if (
            Array.Exists(
                columns,
                c => (c.IsClock || c.Role == ColumnRole.Time) && c.Sequence.IsOrdered && c.IsFilled
            )
        )
        {
            return ReadingKind.Decay;
        }
        if (Array.Exists(columns, c => UnitByMagnitude(c) is not null && c.Sequence.IsOrdered))
        {
            return ReadingKind.Spectrum;
        }
        if (Array.Exists(columns, c => CouldBeTimes(c) && c.Sequence.Least < 100))
        {
            warnings.Add(
                new(
                    "kind_guessed",
                    null,
                    "taken for a decay; no column could be wavelengths, one begins near 0 and rises like times"
                )
            );
            return ReadingKind.Decay;
        }
        return ReadingKind.Spectrum;
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
                && c.Role is ColumnRole.Wavelength or ColumnRole.Unknown or ColumnRole.Light
                && c.Sequence.IsOrdered
                && UnitByMagnitude(c) is not null
            ),
        ];
        if (fitting.Length == 0)
        {
            return WrongUnit(named.Length > 1 ? named : columns);
        }
        return fitting.Length == 1 ? fitting[0] : TheLikeliest(fitting);
    }

    private TableColumn? TheLikeliest(TableColumn[] fitting)
    {
        // The same wavelengths in nm and µm are no question.
        TableColumn first = fitting[0];
        if (
            fitting.All(c =>
                c == first
                || Math.Abs((ToNm(c) * c.Sequence.Most / (ToNm(first) * first.Sequence.Most)) - 1) < 1e-3
                    && Math.Abs((ToNm(c) * c.Sequence.Least / (ToNm(first) * first.Sequence.Least)) - 1)
                        < 1e-3
            )
        )
        {
            return fitting.MinBy(ToNm);
        }
        // Wavelengths keep an even step, or nearly; counts do not.
        TableColumn[] byStep = [.. fitting.OrderBy(c => c.Sequence.Unevenness)];
        if (
            byStep[1].Sequence.Unevenness > 0.25
            && byStep[0].Sequence.Unevenness < byStep[1].Sequence.Unevenness / 3
        )
        {
            return byStep[0];
        }
        problem ??= ReadingTexts.SeveralWavelengths(fitting.Select(c => c.Told));
        return null;
    }

    // No column runs over visible wavelengths in nm or µm: say of the likeliest what it may be instead.
    private TableColumn? WrongUnit(IEnumerable<TableColumn> candidates)
    {
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
                WavelengthHints.For(ordered.Name, ordered.Sequence)
            );
        }
        return null;
    }

    private TableColumn? FindTimes(TableColumn? taken) =>
        Array.Find(columns, c => c != taken && c.IsClock && c.IsFilled && !c.Sequence.IsConstant)
        ?? Array.Find(columns, c => c != taken && c.Role == ColumnRole.Time && CouldBeTimes(c))
        ?? Array.Find(columns, c => c != taken && CouldBeTimes(c));

    private static bool CouldBeTimes(TableColumn c) =>
        c.IsFilled && c.Sequence is { IsOrdered: true, Least: >= 0 } && c.Role is not ColumnRole.Index;

    private static double ToNm(TableColumn column) =>
        WavelengthHints.NmIn(UnitByMagnitude(column) ?? LengthUnit.Nanometre);

    private static LengthUnit? UnitByMagnitude(TableColumn column) =>
        WavelengthHints.UnitOf(column.Sequence.Least, column.Sequence.Most);

    private LengthUnit UnitOf(TableColumn column)
    {
        if (options.WavelengthUnit is { } asked)
        {
            return asked;
        }
        LengthUnit? byMagnitude = UnitByMagnitude(column);
        LengthUnit? byName = HeaderUnits.LengthOf(column.Name);
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
            WavelengthHints.For(column.Name, column.Sequence)
        );
        return LengthUnit.Nanometre;
    }
}
