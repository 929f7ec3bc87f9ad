using GlowMix.Readings.Decay;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Commands;

/// <summary>What is told of one file: a spectrum, with a comparison where one was asked for, or a decay.</summary>
/// <param name="Spectrum">Null for a decay.</param>
/// <param name="Comparison">Null where none was asked for, or none can be made.</param>
/// <param name="Decay">Null for a spectrum.</param>
/// <param name="Geometry">How the meter looked at the glow; null where it is not told.</param>
internal sealed record ReadingAnswer(
    ReadingFigures? Spectrum,
    SpectrumComparison? Comparison,
    DecayFigures? Decay,
    MeterGeometry? Geometry
);
