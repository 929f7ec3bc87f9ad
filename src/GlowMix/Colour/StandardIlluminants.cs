using System.Collections.ObjectModel;
using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>Relative spectra of the CIE's illuminants, every 5 nm.</summary>
/// <remarks>
/// CIE 015:2018 (A, D65: also ISO/CIE 11664-2). A and D from 300 nm, FL and LED from 380 nm, all to 780 nm at least. Between
/// the rows of a lamp with lines nothing is known: figures belong to the table's own step.
/// </remarks>
public static class StandardIlluminants
{
    private static readonly ReadOnlyDictionary<string, string> FileOf = new Dictionary<string, string>(
        Files()
    ).AsReadOnly();

    /// <summary>Names: a, d50, d55, d65, d75, fl1 to fl12, led_b1 to led_b5, led_bh1, led_rgb1, led_v1, led_v2.</summary>
    public static IReadOnlyCollection<string> Names => FileOf.Keys;

    /// <summary>The table of one illuminant.</summary>
    /// <param name="name">One of <see cref="Names"/>, or as the CIE writes it: D65, LED-B3.</param>
    /// <exception cref="ArgumentException">No such illuminant.</exception>
    public static TabulatedSpectrum Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string own = name.ToLowerInvariant().Replace('-', '_');
        return FileOf.TryGetValue(own, out string? file)
            ? ShippedTable.Read($"cie/{file}").Spectrum(own)
            : throw new ArgumentException(
                $"There is no CIE illuminant '{name}' here; there are {string.Join(", ", Names.Order(StringComparer.Ordinal))}.",
                nameof(name)
            );
    }

    private static IEnumerable<KeyValuePair<string, string>> Files()
    {
        yield return new("a", "illuminant_a");
        yield return new("d65", "illuminant_d65");
        foreach (string name in (string[])["d50", "d55", "d75"])
        {
            yield return new(name, "illuminants_d50_d55_d75");
        }
        for (int number = 1; number <= 12; number++)
        {
            yield return new($"fl{number}", "illuminants_fl1_to_fl12");
        }
        string[] leds = ["b1", "b2", "b3", "b4", "b5", "bh1", "rgb1", "v1", "v2"];
        foreach (string name in leds)
        {
            yield return new($"led_{name}", "illuminants_led");
        }
    }
}
