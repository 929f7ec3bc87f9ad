using GlowMix.Predictions;

namespace GlowMix.Readings.Files;

/// <summary>Whether columns are a spectrum or a decay: by their names, then by their numbers.</summary>
internal static class KindFinder
{
    /// <summary>The kind.</summary>
    /// <param name="columns">The table's columns.</param>
    /// <param name="asked">That which the user names as wavelengths or times; null without.</param>
    /// <param name="warnings">A guess is told here.</param>
    public static ReadingKind Find(TableColumn[] columns, TableColumn? asked, List<Warning> warnings)
    {
        if (asked is not null)
        {
            return AreTimes(asked) ? ReadingKind.Decay : ReadingKind.Spectrum;
        }
        // Wavenumbers, photon energies and Å without a word are refused as wavelengths, and not taken for times.
        if (
            Array.Exists(
                columns,
                c =>
                    c.Role == ColumnRole.Wavelength
                    || c.Role == ColumnRole.OtherScale
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
        // A time beside each wavelength makes no decay.
        if (Array.Exists(columns, RunsLikeWavelengths))
        {
            return ReadingKind.Spectrum;
        }
        if (
            Array.Exists(
                columns,
                c =>
                    AreTimes(c)
                    && c.IsFilled
                    && (c.Sequence.IsOrdered || c.Role == ColumnRole.Time && !c.Sequence.IsConstant)
            )
        )
        {
            return ReadingKind.Decay;
        }
        if (
            Array.Exists(columns, c => c.UnitBySize is not null && c.Sequence.IsOrdered)
            || FirstAlong(columns) is { } first && OtherScale.Shown(first) is not null
        )
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

    /// <summary>They rise or fall and are not below 0.</summary>
    public static bool CouldBeTimes(TableColumn c) =>
        c.IsFilled && c.Sequence is { IsOrdered: true, Least: >= 0 } && c.Role is not ColumnRole.Index;

    // Even steps over visible wavelengths; a glow falls ever slower.
    private static bool RunsLikeWavelengths(TableColumn column)
    {
        const int ManyRows = 8;
        const double Even = 0.15;
        return column.Role == ColumnRole.Unknown
            && column.Numbers.Length >= ManyRows
            && column.Sequence is { IsOrdered: true, Unevenness: < Even, Least: > 100 }
            && column.UnitBySize == LengthUnit.Nanometre;
    }

    private static bool AreTimes(TableColumn column) =>
        column.IsClock || column.IsDuration || column.Role == ColumnRole.Time;

    private static TableColumn? FirstAlong(TableColumn[] columns) =>
        Array.Find(
            columns,
            c => c.Role == ColumnRole.Unknown && c.Sequence.IsOrdered && c.IsFilled && !c.IsRunningIndex
        );
}
