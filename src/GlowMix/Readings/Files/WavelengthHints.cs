namespace GlowMix.Readings.Files;

/// <summary>Which unit wavelengths can be in, by their size.</summary>
internal static class WavelengthHints
{
    // Instruments for visible light reach from the ultraviolet some way into the infrared.
    private const double ShortestNm = 100;
    private const double LongestNm = 3500;
    private const double VisibleFromNm = 400;
    private const double VisibleToNm = 700;

    /// <summary>nm, µm or m, where the range then holds visible light; null where none does. Å could be times in seconds.</summary>
    public static LengthUnit? UnitOf(double least, double most) =>
        IsVisible(least, most) ? LengthUnit.Nanometre
        : IsVisible(1e3 * least, 1e3 * most) ? LengthUnit.Micrometre
        : IsVisible(1e9 * least, 1e9 * most) ? LengthUnit.Metre
        : null;

    /// <summary>Whether numbers would be visible light in Å.</summary>
    public static bool CouldBeAngstrom(NumberSequence sequence) =>
        IsVisible(0.1 * sequence.Least, 0.1 * sequence.Most);

    /// <summary>nm in a unit.</summary>
    public static double NmIn(LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Micrometre => 1e3,
            LengthUnit.Angstrom => 0.1,
            LengthUnit.Metre => 1e9,
            _ => 1,
        };

    /// <summary>The unit's sign.</summary>
    public static string Word(LengthUnit unit) =>
        unit switch
        {
            LengthUnit.Micrometre => "µm",
            LengthUnit.Angstrom => "Å",
            LengthUnit.Metre => "m",
            _ => "nm",
        };

    /// <summary>What numbers that are no visible nm may be, with the option to say so.</summary>
    public static string For(TableColumn column)
    {
        const string Option = "say --wavelength-unit";
        NumberSequence sequence = column.Sequence;
        return OtherScale.Shown(column) is { } scale
                ? $"; as {scale.Name} they would be: export wavelengths in nm"
            : CouldBeAngstrom(sequence) ? $"; if they are Å, {Option} angstrom"
            : $"; {Option} nm, um, angstrom or m, or name another column with --wavelength-column";
    }

    /// <summary>The range holds visible light, and no more than instruments for it reach.</summary>
    public static bool IsVisible(double leastNm, double mostNm) =>
        leastNm >= ShortestNm
        && mostNm <= LongestNm
        && leastNm <= VisibleToNm
        && mostNm >= VisibleFromNm
        && mostNm > leastNm;
}
