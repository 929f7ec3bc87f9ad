using System.Collections.Immutable;

namespace GlowMix.Readings.Spectral;

/// <summary>A part of the visible range with a name. Where one ends and the next begins is our own choice, no source.</summary>
/// <param name="Name">A word for its colour.</param>
/// <param name="Range">Its wavelengths.</param>
public sealed record SpectralBand(string Name, WavelengthRange Range)
{
    /// <summary>All of them, from short to long wavelengths, without gaps.</summary>
    public static ImmutableArray<SpectralBand> All { get; } =
    [
        new("violet", new(380, 430)),
        new("blue", new(430, 500)),
        new("green", new(500, 570)),
        new("yellow", new(570, 600)),
        new("orange", new(600, 630)),
        new("red", new(630, 780)),
    ];
}
