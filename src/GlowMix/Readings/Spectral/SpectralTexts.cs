using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>The words of what can go wrong between two readings.</summary>
public static class SpectralTexts
{
    /// <summary>Nothing is left to divide by.</summary>
    public const string NoResponse =
        "the reading of the known lamp has no two wavelengths with enough light; read it again with a longer exposure";

    /// <summary>Counts and watts.</summary>
    public static string UnitsDiffer(string what, string unit, string other) =>
        $"the reading is in {unit}, {what} in {other}; needed: the same unit, say --unit if it was found wrong";

    /// <summary>No wavelengths in common.</summary>
    public static string NoOverlap(string what, TabulatedSpectrum reading, TabulatedSpectrum other) =>
        ReadingTexts.Invariant(
            $"the reading has {reading.FirstNm:0.###} to {reading.LastNm:0.###} nm, {what} {other.FirstNm:0.###} to {other.LastNm:0.###} nm; needed: wavelengths that both have"
        );

    /// <summary>A window without enough samples.</summary>
    public static string EmptyWindow(
        WavelengthRange window,
        int found,
        int needed,
        TabulatedSpectrum reading
    ) =>
        ReadingTexts.Invariant(
            $"the dark window {window.FromNm} to {window.ToNm} nm holds {found} values; needed: {needed} or more of the reading's {reading.FirstNm:0.###} to {reading.LastNm:0.###} nm"
        );

    /// <summary>A number that is no reflectance.</summary>
    public static string Reflectance(double found) =>
        ReadingTexts.Invariant($"a reflectance of {found}; allowed: above 0, up to 1");

    /// <summary>A table that is no reflectance.</summary>
    public static string ReflectanceAt(double nm, double found) =>
        ReadingTexts.Invariant(
            $"a reflectance of {found:0.###} at {nm} nm; allowed: 0.02 to 1.5, or percent"
        );

    /// <summary>No lamp of that name.</summary>
    public static string NoLamp(string name, IEnumerable<string> known)
    {
        string[] names = [.. known];
        return $"no lamp is called {ProblemTexts.Quote(name)}{ProblemTexts.DidYouMean(name, names)}; allowed: {string.Join(", ", names)}, or the temperature of a glowing body such as 2856K";
    }

    /// <summary>Brought onto other wavelengths.</summary>
    internal static SpectralReading WarnGrid(SpectralReading reading, string what) =>
        reading.Warned(
            "grid_differs",
            $"{what} has other wavelengths; its values are read off straight lines between them, over the range that both have"
        );
}
