using GlowMix.Readings.Decay;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Commands;

/// <summary>What is told of one file: a spectrum or a decay, and what it was compared with.</summary>
/// <param name="Spectrum">Null for a decay.</param>
/// <param name="Decay">Null for a spectrum.</param>
internal sealed record ReadingAnswer(ReadingFigures? Spectrum, DecayFigures? Decay)
{
    /// <summary>With another spectrum; null where none was asked for, or none can be made.</summary>
    public SpectrumComparison? Comparison { get; init; }

    /// <summary>A spectrum beside a prediction, or null.</summary>
    public SpectrumAgainstPrediction? Predicted { get; init; }

    /// <summary>A decay beside a prediction, or null: none was asked for, or the piece does not glow.</summary>
    public DecayAgainstPrediction? DecayPredicted { get; init; }

    /// <summary>How the meter looked at the glow; null where it is not told.</summary>
    public MeterGeometry? Geometry { get; init; }
}
