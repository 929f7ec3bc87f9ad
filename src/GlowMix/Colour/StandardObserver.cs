using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>
/// What a standard eye makes of a wavelength: colour matching functions of the CIE 1931 observer (2°) and the scotopic
/// V′(λ). Linear between the tables' rows of 1 nm, zero beyond them.
/// </summary>
/// <remarks>
/// CIE 015:2018 and ISO/CIE 11664-1 for x̄, ȳ, z̄ (360 to 830 nm); ISO 23539 for V′ (380 to 780 nm). V(λ) of daylight
/// vision is ȳ: the tables agree to every printed digit.
/// </remarks>
internal static class StandardObserver
{
    private static readonly ShippedTable Cie1931 = ShippedTable.Read("cie/cie1931_2deg");

    /// <summary>x̄(λ), 1 nm.</summary>
    public static TabulatedSpectrum XBar { get; } = Cie1931.Spectrum("x_bar");

    /// <summary>ȳ(λ) = V(λ), 1 nm.</summary>
    public static TabulatedSpectrum YBar { get; } = Cie1931.Spectrum("y_bar");

    /// <summary>z̄(λ), 1 nm.</summary>
    public static TabulatedSpectrum ZBar { get; } = Cie1931.Spectrum("z_bar");

    /// <summary>V′(λ), 1 nm.</summary>
    public static TabulatedSpectrum VPrime { get; } = ShippedTable.Read("cie/v_scotopic").Spectrum("v_prime");
}
