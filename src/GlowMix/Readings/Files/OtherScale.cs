namespace GlowMix.Readings.Files;

/// <summary>A scale of a spectrum that is none of wavelengths; the product of both is constant.</summary>
/// <param name="Name">Of what it counts, with its unit.</param>
/// <param name="TimesNm">A wavelength in nm times its number on this scale.</param>
internal sealed record OtherScale(string Name, double TimesNm)
{
    // c, h and e of SI 2019.
    private static readonly OtherScale Wavenumber = new("wavenumbers per cm", 1e7);
    private static readonly OtherScale Terahertz = new("frequencies in THz", 299_792.458);
    private static readonly OtherScale Hertz = new("frequencies in Hz", 2.99792458e17);
    private static readonly OtherScale ElectronVolt = new("photon energies in eV", 1239.84198);
    private static readonly OtherScale[] All = [Wavenumber, Terahertz, Hertz, ElectronVolt];

    /// <summary>The scale of a column, by its name and the size of its numbers; null where the name tells none.</summary>
    public static OtherScale? Named(TableColumn column) =>
        column.Role != ColumnRole.OtherScale ? null
        : Array.Find(All, s => s.IsVisible(column.Sequence)) is { } fitting ? fitting
        : new("no wavelengths", 0);

    /// <summary>The scale that numbers without a name run along: none of wavelengths, and hardly one of times.</summary>
    public static OtherScale? Shown(TableColumn column)
    {
        const int ManyRows = 20;
        const double MostEv = 7;
        NumberSequence sequence = column.Sequence;
        if (!sequence.IsOrdered || !column.IsFilled)
        {
            return null;
        }
        OtherScale? even = IsEvenInNm(column) ? Array.Find(All, s => s.IsVisible(sequence)) : null;
        return even
            ?? (
                Wavenumber.IsVisible(sequence) && sequence.Least > 9000 ? Wavenumber
                : Hertz.IsVisible(sequence) ? Hertz
                : ElectronVolt.IsVisible(sequence)
                && sequence.Most < MostEv
                && (sequence.IsDescending || column.Numbers.Length >= ManyRows)
                    ? ElectronVolt
                : null
            );
    }

    // Wavelengths in even steps, turned into another scale, are even in its reciprocal and there alone.
    private static bool IsEvenInNm(TableColumn column)
    {
        const int FewestRows = 8;
        const double Uneven = 0.05;
        const double Even = 0.02;
        return column.Numbers.Length >= FewestRows
            && column.Sequence is { Unevenness: > Uneven, Least: > 0 }
            && NumberSequence.Of([.. column.Numbers.Select(n => 1 / n)]).Unevenness < Even;
    }

    private bool IsVisible(NumberSequence sequence) =>
        sequence.Least > 0 && WavelengthHints.IsVisible(TimesNm / sequence.Most, TimesNm / sequence.Least);
}
