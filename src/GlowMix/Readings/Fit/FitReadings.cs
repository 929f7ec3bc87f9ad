using System.Collections.Immutable;
using GlowMix.Pieces;
using GlowMix.Spectra;

namespace GlowMix.Readings.Fit;

/// <summary>All that a fit starts from.</summary>
public sealed record FitReadings
{
    /// <summary>The recipe's piece, of the materials as they stand, not calibrated.</summary>
    public required Piece Piece { get; init; }

    /// <summary>The bare board lit, before the pour; null where only decays were read.</summary>
    public TabulatedSpectrum? Bare { get; init; }

    /// <summary>
    /// Whether the spectrometer's numbers are corrected for its response, so that the bare spectrum tells the LED's bands; otherwise
    /// only ratios to it are used.
    /// </summary>
    public bool IsCorrected { get; init; }

    /// <summary>How well the levels of lit readings compare with that of the bare one, standard deviation in %; null: not at all.</summary>
    public double? ComparablePercent { get; init; }

    /// <summary>Lit pieces.</summary>
    public ImmutableArray<LitReading> Lit { get; init; } = [];

    /// <summary>Decays.</summary>
    public ImmutableArray<GlowReading> Glows { get; init; } = [];
}
