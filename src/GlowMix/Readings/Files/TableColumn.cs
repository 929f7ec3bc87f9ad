namespace GlowMix.Readings.Files;

/// <summary>A column with what its header and its numbers say.</summary>
/// <param name="Index">From 0.</param>
/// <param name="Name">From the header; may be empty.</param>
/// <param name="Role">What the name says.</param>
/// <param name="Numbers">The numbers of the rows that have one.</param>
/// <param name="Sequence">How they follow each other.</param>
/// <param name="IsClock">They are times of the clock.</param>
/// <param name="IsDuration">They are durations, each with its unit; read as minutes.</param>
/// <param name="IsMixed">Some are durations with a unit, others numbers without or times of the clock; or they have several units.</param>
/// <param name="OddMark">Row of a number of thousands among numbers with decimals: a slip of the decimal mark; null without.</param>
/// <param name="Unit">The unit behind the numbers; empty where there is none.</param>
/// <param name="IsFilled">Nearly every row has a number here.</param>
internal sealed record TableColumn(
    int Index,
    string Name,
    ColumnRole Role,
    double[] Numbers,
    NumberSequence Sequence,
    bool IsClock,
    bool IsDuration,
    bool IsMixed,
    int? OddMark,
    string Unit,
    bool IsFilled
)
{
    private const int LongIndex = 20;

    /// <summary>As told to the user.</summary>
    public ColumnName Told => new(Index + 1, Name);

    /// <summary>Whole numbers in steps of 1: from 0 or 1, or for long.</summary>
    public bool IsRunningIndex =>
        Sequence.IsRunningNumber
        && (
            Numbers.Length >= LongIndex
            || Numbers.Length > 3
                // At either end; a number or two of a header may stand before it.
                && (Numbers.Take(3).Any(n => n is 0 or 1) || Numbers.TakeLast(3).Any(n => n is 0 or 1))
        );

    /// <summary>They are the wavelengths of another column, in the same unit or another.</summary>
    public bool IsSameScale(TableColumn other)
    {
        if (
            !Sequence.IsOrdered
            || Numbers.Length != other.Numbers.Length
            || Numbers[0] == 0
            || other.Numbers[0] == 0
        )
        {
            return false;
        }
        double ratio = Numbers[0] / other.Numbers[0];
        double power = Math.Log10(ratio);
        return Math.Abs(power - Math.Round(power)) < 1e-6
            && Numbers
                .Zip(other.Numbers, (own, its) => Math.Abs((own / (ratio * its)) - 1))
                .All(d => d < 1e-6);
    }

    /// <summary>The unit in which the numbers would reach over visible wavelengths; null if in none.</summary>
    public LengthUnit? UnitBySize =>
        IsClock || IsDuration ? null : WavelengthHints.UnitOf(Sequence.Least, Sequence.Most);

    /// <summary>The columns of a table.</summary>
    public static TableColumn[] Of(CellTable table)
    {
        string[] names = TableHeader.NamesOf(table);
        var columns = new TableColumn[table.Width];
        for (int i = 0; i < columns.Length; i++)
        {
            var numbers = new List<double>(table.NumberRows.Count);
            var units = new List<string>();
            int clocks = 0;
            int durations = 0;
            foreach (int row in table.NumberRows)
            {
                double number = table.NumberAt(row, i);
                if (!double.IsNaN(number))
                {
                    numbers.Add(number);
                    clocks += table.SortOf(row, i) == CellSort.Clock ? 1 : 0;
                    durations += table.SortOf(row, i) == CellSort.Duration ? 1 : 0;
                    var unit = table.UnitAt(row, i);
                    if (!unit.IsEmpty && !Holds(units, unit))
                    {
                        units.Add(unit.ToString());
                    }
                }
            }
            double[] found = [.. numbers];
            columns[i] = new(
                i,
                names[i],
                RoleOf(names[i], units),
                found,
                NumberSequence.Of(found),
                clocks * 2 > found.Length,
                durations * 2 > found.Length,
                durations > 0 && durations < found.Length
                    || units.Exists(u => !HeaderUnits.AreSame(u, units[0])),
                OddMarkIn(table, i, found),
                units.Count > 0 ? units[0] : "",
                found.Length >= 0.9 * table.NumberRows.Count
            );
        }
        return columns;
    }

    private static int? OddMarkIn(CellTable table, int column, double[] numbers)
    {
        if (!table.HasGroups || numbers.Count(n => n != Math.Floor(n)) * 2 < numbers.Length)
        {
            return null;
        }
        int[] odd = [.. table.NumberRows.Where(row => table.IsGroupAlone(row, column))];
        return odd.Length > 0 ? odd[0] : null;
    }

    // A column without a name may tell by its units: '4500 Å'.
    private static ColumnRole RoleOf(string name, List<string> units)
    {
        // '10 s' tells which of several readings it is.
        if (NumberCell.TryRead(NumberCell.Trim(name), '.', out _))
        {
            return ColumnRole.Unknown;
        }
        ColumnRole role = HeaderWords.RoleOf(name);
        return role != ColumnRole.Unknown || units.Count == 0 ? role : HeaderWords.RoleOf(units[0]);
    }

    private static bool Holds(List<string> units, ReadOnlySpan<char> unit)
    {
        foreach (string known in units)
        {
            if (unit.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }
        return false;
    }
}
