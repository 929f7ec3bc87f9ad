using GlowMix.Spectra;

namespace GlowMix.LitState;

/// <summary>A white LED package as three bands of light: die, green–yellow phosphor, orange–red phosphor.</summary>
/// <param name="Shapes">Three spectra per nm, each with an integral of 1.</param>
/// <param name="BareW">Three powers out of the bare package in air, W, at the drive in question.</param>
/// <param name="Returned">
/// 3 × 3, watts per watt: what of light of band <c>column</c> that falls back on the package leaves it again in band <c>row</c>.
/// </param>
/// <param name="WindowRadiusMm">Radius of the emitting window.</param>
public sealed record LedBands(
    IReadOnlyList<Spectrum> Shapes,
    IReadOnlyList<double> BareW,
    double[,] Returned,
    double WindowRadiusMm
)
{
    /// <summary>Index of the die band.</summary>
    public const int Die = 0;

    /// <summary>Number of bands.</summary>
    public const int Count = 3;

    /// <summary>Spectrum of the bare package in air, W/nm.</summary>
    public Spectrum BareWPerNm => (BareW[0] * Shapes[0]) + (BareW[1] * Shapes[1]) + (BareW[2] * Shapes[2]);
}
