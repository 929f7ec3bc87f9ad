using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>A light that charges a piece from above.</summary>
public sealed record Lamp : Material
{
    /// <summary>Under this, lm/W over 340 to 780 nm, lux say nothing of a lamp's strength and are refused.</summary>
    public const double LeastLmPerWForLux = 20;

    /// <summary>Energy per nm in an arbitrary unit; zero where its table does not reach.</summary>
    public required Sourced<Spectrum> RelativeSpectrum { get; init; }

    /// <summary>First wavelength that its data reach, nm; may lie below the model's 340 nm.</summary>
    public required double StartsAtNm { get; init; }

    /// <summary>Below <see cref="StartsAtNm"/> there may be light that the data do not tell; it counts as zero and is a doubt.</summary>
    public required bool IsUnknownBelowStart { get; init; }

    /// <summary>The model's wavelengths begin where the lamp's light is not known.</summary>
    public bool LacksNearUltraviolet => IsUnknownBelowStart && StartsAtNm > WavelengthGrid.FirstNm;

    /// <summary>Lumens of a watt of its light from 340 to 780 nm.</summary>
    public double LmPerW =>
        Photometry.PhotopicLm(RelativeSpectrum.Value) / RelativeSpectrum.Value.IntegralOverNm();

    /// <summary>Its strength can be told in lux.</summary>
    public bool TakesIlluminance => LmPerW >= LeastLmPerWForLux;

    /// <summary>Spectral irradiance at an illuminance, W/(m² nm).</summary>
    /// <param name="illuminanceLx">lx, 0 or more.</param>
    /// <exception cref="InvalidOperationException">The lamp gives too little visible light for lux to mean anything.</exception>
    public Spectrum WPerM2NmAtLux(double illuminanceLx) =>
        TakesIlluminance
            ? illuminanceLx / Photometry.PhotopicLm(RelativeSpectrum.Value) * RelativeSpectrum.Value
            : throw new InvalidOperationException(
                $"'{Name}' gives under {LeastLmPerWForLux} lm/W; tell its irradiance in W/m²."
            );

    /// <summary>Spectral irradiance at an irradiance over 340 to 780 nm, W/(m² nm).</summary>
    /// <param name="irradianceWPerM2">W/m², 0 or more.</param>
    public Spectrum WPerM2NmAtIrradiance(double irradianceWPerM2) =>
        irradianceWPerM2 / RelativeSpectrum.Value.IntegralOverNm() * RelativeSpectrum.Value;
}
