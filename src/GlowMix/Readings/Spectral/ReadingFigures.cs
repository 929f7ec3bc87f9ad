using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>
/// All figures of a spectral reading, on its own wavelengths from 380 to 780 nm: as the CIE sums, never brought onto the
/// model's grid.
/// </summary>
public sealed record ReadingFigures
{
    private ReadingFigures(SpectralReading reading)
    {
        Reading = reading;
        Visible = reading.Spectrum.Between(WavelengthRange.Visible.FromNm, WavelengthRange.Visible.ToNm);
        Weights = ObserverWeights.For(Visible);
        Colour = ColourFigures.Of(Visible.Values, Weights);
        (White, IsInsideWhite) =
            Colour.Chromaticity is { } point && Colour.CctK is not null
                ? NominalWhite.Nearest(point)
                : (null, false);
        Peaks = SpectrumShape.Peaks(Visible);
        Bands = SpectrumShape.Bands(Visible);
        Warnings = [.. reading.Warnings, .. SpectrumChecks.Of(this)];
    }

    /// <summary>The reading, with all that was taken off or divided out.</summary>
    public SpectralReading Reading { get; }

    /// <summary>Its samples from 380 to 780 nm.</summary>
    public TabulatedSpectrum Visible { get; }

    /// <summary>Chromaticity, CCT, Duv, colour rendering, S/P, lm/W.</summary>
    public ColourFigures Colour { get; }

    /// <summary>The nearest nominal white of ANSI C78.377-2015; null without a CCT.</summary>
    public NominalWhite? White { get; }

    /// <summary>The reading lies inside that white's quadrangle.</summary>
    public bool IsInsideWhite { get; }

    /// <summary>Illuminance, lx; null where the reading is in no absolute unit.</summary>
    public double? IlluminanceLx => Reading.Unit == SpectralUnit.WPerM2Nm ? Colour.LuminousFluxLm : null;

    /// <summary>Highest first.</summary>
    public ImmutableArray<ReadingPeak> Peaks { get; }

    /// <summary>Shares of the power; empty without light.</summary>
    public ImmutableArray<BandShare> Bands { get; }

    /// <summary>The reading's own, then those of its figures, each with its effect on the CCT.</summary>
    public ImmutableArray<Warning> Warnings { get; }

    internal ObserverWeights Weights { get; }

    /// <summary>Works them out.</summary>
    /// <param name="reading">
    /// A reading with two or more samples from 380 to 780 nm, as every file that was read has; what is left of one after
    /// <see cref="DarkReading"/>, <see cref="ReflectingSurface"/> or <see cref="InstrumentResponse"/> may have fewer.
    /// </param>
    /// <returns>Null where fewer than two samples are visible.</returns>
    public static ReadingFigures? Of(SpectralReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        int visible = 0;
        foreach (double nm in reading.Spectrum.WavelengthsNm)
        {
            visible += WavelengthRange.Visible.Contains(nm) ? 1 : 0;
        }
        return visible < 2 ? null : new(reading);
    }
}
