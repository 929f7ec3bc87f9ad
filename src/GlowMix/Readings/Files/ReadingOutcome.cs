using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Readings.Files;

/// <summary>What became of a file of readings: a spectrum, a decay, or problems.</summary>
/// <param name="Spectrum">The spectrum, or null.</param>
/// <param name="Decay">The decay, or null.</param>
/// <param name="Problems">Why there is neither; else empty, for what a reader should know is among the reading's warnings.</param>
public sealed record ReadingOutcome(
    SpectralReading? Spectrum,
    DecayReading? Decay,
    ImmutableArray<Problem> Problems
);
