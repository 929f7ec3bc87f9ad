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

    /// <summary>
    /// Where neighbouring values stood at exactly the same top, before anything was taken off: full of light, or rounded.
    /// </summary>
    public ImmutableArray<WavelengthRange> FlatTops { get; init; } = [];

    /// <summary>What to know before trusting it, in the order in which it was found.</summary>
    public ImmutableArray<Warning> Warnings { get; init; } = [];

    /// <summary>How the file was understood.</summary>
    public required TableFindings Findings { get; init; }

    /// <summary>The same with one more warning.</summary>
    internal SpectralReading Warned(string code, string text) =>
        this with
        {
            Warnings = Warnings.Add(new(code, "cct_k", text)),
        };
}
