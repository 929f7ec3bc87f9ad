using System.Collections.Immutable;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Readings;

/// <summary>A spectrum as an instrument or a person wrote it down, on its own wavelengths.</summary>
public sealed record SpectralReading
{
    /// <summary>The file as the user named it.</summary>
    public required string File { get; init; }

    /// <summary>
    /// The values over the wavelengths of the file, in nm and ascending, in <see cref="Unit"/>. Negative noise is kept: cut to
    /// zero it would leave a pedestal.
    /// </summary>
    public required TabulatedSpectrum Spectrum { get; init; }

    /// <summary>What the values count.</summary>
    public required SpectralUnit Unit { get; init; }

    /// <summary>Whether the response of the instrument has been taken out; null where nobody said.</summary>
    public bool? IsCorrected { get; init; }

    /// <summary>Its colour means something: power, or counts known as corrected. Without, only ratios do.</summary>
    public bool IsColourTrustworthy => IsCorrected ?? Unit != SpectralUnit.Counts;

    /// <summary>What to know before trusting it, in the order in which it was found.</summary>
    public ImmutableArray<Warning> Warnings { get; init; } = [];

    /// <summary>How the file was understood.</summary>
    public required TableFindings Findings { get; init; }
}
