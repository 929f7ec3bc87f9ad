using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>The words of the problems a LED's spectrum file can have.</summary>
public static class SpectrumTexts
{
    /// <summary>A white LED's light reaches at least from here, nm …</summary>
    internal const double LeastCoverNm = 420;

    /// <summary>… to here, nm.</summary>
    internal const double MostCoverNm = 700;

    /// <summary>The model's own step, nm; wider ones are interpolated.</summary>
    internal const double CoarseStepNm = 5;

    /// <summary>Nothing but zeros.</summary>
    public const string AllZero = "all values are 0; needed: some light";

    /// <summary>Not two columns.</summary>
    public static string Columns(int found) =>
        Invariant(
            $"{found} {(found == 1 ? "column" : "columns")}; needed: 2, a wavelength in nm and a value, such as '450, 0.82'"
        );

    /// <summary>A wavelength in another unit, or none at all.</summary>
    public static string Wavelength(double found, NumberRange allowedNm) =>
        Invariant($"wavelength is {found}; allowed: {allowedNm} nm");

    /// <summary>The same wavelength again.</summary>
    public static string Twice(double nm) =>
        Invariant($"wavelength {nm} nm stands twice; keep one of the lines");

    /// <summary>A wavelength below the one before.</summary>
    public static string NotRising(double nm, double previousNm) =>
        Invariant($"wavelength {nm} nm comes after {previousNm} nm; sort the lines by rising wavelength");

    /// <summary>Too little to draw a line through.</summary>
    public static string TooFewRows(int found) =>
        Invariant($"{found} {(found == 1 ? "line" : "lines")} with numbers; needed: 2 or more");

    /// <summary>Part of the light is missing.</summary>
    public static string CutOff(double firstNm, double lastNm) =>
        Invariant(
            $"reaches from {firstNm} to {lastNm} nm only; a white LED shines from {LeastCoverNm} to {MostCoverNm} nm, and what is not in the file is taken as dark"
        );

    /// <summary>Coarser than the model.</summary>
    public static string Coarse(double widestNm) =>
        Invariant(
            $"steps of up to {widestNm} nm; between them the light is interpolated, finer than {CoarseStepNm} nm is better"
        );

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
