using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>Finds the column of the light among those beside the wavelengths or times, and the dark one that belongs to it.</summary>
/// <param name="columns">All columns.</param>
/// <param name="along">That of the wavelengths or times.</param>
/// <param name="kind">Spectrum or decay.</param>
/// <param name="warnings">Guesses are told here.</param>
internal sealed class LightColumns(
    TableColumn[] columns,
    TableColumn along,
    ReadingKind kind,
    List<Warning> warnings
)
{
    /// <summary>The column of the light; null where there is none.</summary>
    public TableColumn? Find()
    {
        TableColumn[] rest =
        [
            .. columns.Where(c =>
                c != along
                && c.Numbers.Length * 2 >= along.Numbers.Length
                && !c.IsClock
                && !c.IsDuration
                && c.Role
                    is not (
                        ColumnRole.Index
                        or ColumnRole.Aside
                        or ColumnRole.Logarithm
                        or ColumnRole.Weighted
                        or ColumnRole.Wavelength
                        or ColumnRole.OtherScale
                        or ColumnRole.Time
                    )
                && !(c.Role == ColumnRole.Unknown && (c.IsRunningIndex || c.IsSameScale(along)))
            ),
        ];
        // A short name may mean something else: 'č.', 'i'.
        rest = rest.Any(c => !c.IsRunningIndex) ? [.. rest.Where(c => !c.IsRunningIndex)] : rest;
        if (rest.Length == 0)
        {
            return SetAside();
        }
        if (Difference(rest) is { } net)
        {
            return net;
        }
        int best = rest.Max(Rank);
        TableColumn[] equals = [.. rest.Where(c => Rank(c) == best)];
        TableColumn[] moving = [.. equals.Where(c => !c.Sequence.IsConstant)];
        equals = moving.Length > 0 ? moving : equals;
        TableColumn taken = Likeliest(equals);
        // A column of no known word is taken before one called reference or raw: a guess as well.
        TableColumn[] others =
            taken.Role == ColumnRole.Unknown
                ? [.. rest.Where(c => c != taken && c.Role != ColumnRole.Dark && !c.Sequence.IsConstant)]
                : [.. equals.Where(c => c != taken)];
        if (others.Any(c => !c.Numbers.AsSpan().SequenceEqual(taken.Numbers)))
        {
            warnings.Add(
                new(
                    "column_guessed",
                    null,
                    $"{taken.Told} is taken as the light; {string.Join(", ", others.Take(6).Select(c => c.Told))}{(others.Length > 6 ? " and more" : "")} could be it too, say which with --column"
                )
            );
        }
        if (taken.Role == ColumnRole.Share)
        {
            warnings.Add(
                new(
                    "share_no_light",
                    null,
                    $"{taken.Told} is a share of light and no light: the figures are those of an even light that passed it"
                )
            );
        }
        return taken;
    }

    // Of columns without a name an even one beside a peaked one is rather its dark reading.
    private static TableColumn Likeliest(TableColumn[] equals)
    {
        const double Even = 0.4;
        const double Peaked = 0.6;
        return
            equals[0].Role == ColumnRole.Unknown
            && Contrast(equals[0]) < Even
            && Array.Find(equals, c => Contrast(c) > Peaked) is { } peaked
            ? peaked
            : equals[0];
    }

    private static double Contrast(TableColumn column)
    {
        double most = column.Numbers.Max();
        return most > 0 ? (most - column.Numbers.Min()) / most : 0;
    }

    /// <summary>The dark column to be taken off a light; null where there is none, or where it is off already.</summary>
    public TableColumn? DarkFor(TableColumn light)
    {
        TableColumn? dark = columns.FirstOrDefault(c =>
            c.Role == ColumnRole.Dark && c != light && c != along && c.IsFilled
        );
        if (
            dark is null
            || kind == ReadingKind.Decay
            || light.Role is not (ColumnRole.Raw or ColumnRole.Light or ColumnRole.Mean or ColumnRole.Unknown)
            || LightUnits.Of(light.Name) is { Unit: SpectralUnit.WPerM2Nm }
            // The dark reading is that of the counts beside it.
            || (
                IsPower(light)
                && columns.Any(c =>
                    c != light
                    && c.Role is ColumnRole.Raw or ColumnRole.Light or ColumnRole.Reference
                    && !IsPower(c)
                )
            )
        )
        {
            return null;
        }
        warnings.Add(
            new(
                "dark_column",
                null,
                $"{dark.Told} is taken off {light.Told} as its dark reading; --column alone leaves it on"
            )
        );
        return dark;
    }

    // A name may mislead: what else there is, is better than nothing.
    private TableColumn? SetAside()
    {
        TableColumn? taken = columns.FirstOrDefault(c =>
            c != along
            && c.Role is (ColumnRole.Unknown or ColumnRole.Aside or ColumnRole.Time)
            && !(c.Role == ColumnRole.Unknown && c.IsSameScale(along))
            && c.Numbers.Length > 0
            && !c.IsClock
        );
        if (taken is not null)
        {
            warnings.Add(
                new(
                    "column_guessed",
                    null,
                    $"{taken.Told} is taken as the light, for there is no other column; its name does not say so"
                )
            );
        }
        return taken;
    }

    // Power before counts: its colour means something.
    private static int Rank(TableColumn column) =>
        column.Role switch
        {
            ColumnRole.Mean => LightUnits.Of(column.Name)?.Unit == SpectralUnit.Counts ? 8 : 11,
            ColumnRole.Light => LightUnits.Of(column.Name) is { Unit: SpectralUnit.WPerM2Nm } ? 10
            : IsPower(column) ? 7
            : 6,
            ColumnRole.Net => 9,
            ColumnRole.Unknown => 4,
            ColumnRole.Raw => 3,
            ColumnRole.Share => 2,
            ColumnRole.Reference => 1,
            _ => 0,
        };

    private static bool IsPower(TableColumn column) =>
        HeaderWords.Has(HeaderFold.Of(column.Name), HeaderVocabulary.Power)
        && LightUnits.Of(column.Name)?.Unit != SpectralUnit.Counts;

    // A column that is another minus a third, row by row, is the net one whatever the header calls it.
    private static TableColumn? Difference(TableColumn[] rest)
    {
        const int MostColumns = 6;
        if (rest.Length is < 3 or > MostColumns || rest.Any(c => c.Role == ColumnRole.Net))
        {
            return null;
        }
        foreach (TableColumn net in rest)
        {
            foreach (TableColumn raw in rest)
            {
                foreach (TableColumn dark in rest)
                {
                    if (
                        net != raw
                        && raw != dark
                        && net != dark
                        && !net.Sequence.IsConstant
                        && IsDifference(net, raw, dark)
                    )
                    {
                        return net;
                    }
                }
            }
        }
        return null;
    }

    private static bool IsDifference(TableColumn net, TableColumn raw, TableColumn dark)
    {
        int count = net.Numbers.Length;
        if (raw.Numbers.Length != count || dark.Numbers.Length != count || count < 5)
        {
            return false;
        }
        double largest = raw.Numbers.Max(Math.Abs);
        double darkest = dark.Numbers.Max(Math.Abs);
        double netMost = net.Numbers.Max(Math.Abs);
        // Of raw = net + dark and net = raw − dark only the roles differ: dark is the one without a peak of its own.
        if (largest == 0 || darkest == 0 || darkest > netMost)
        {
            return false;
        }
        double tolerance = Math.Max(1e-3 * darkest, 1e-6 * largest);
        int fitting = 0;
        for (int i = 0; i < count; i++)
        {
            fitting += Math.Abs(net.Numbers[i] - (raw.Numbers[i] - dark.Numbers[i])) <= tolerance ? 1 : 0;
        }
        return fitting >= 0.98 * count;
    }
}
