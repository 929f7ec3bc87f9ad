using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Materials.Calibrations;
using GlowMix.Readings.Fit;

namespace GlowMix.Readings.Sets;

/// <summary>A set of readings, read.</summary>
/// <param name="Readings">What a fit starts from; null if there are errors.</param>
/// <param name="Problems">Errors and warnings of the recipe, its materials and the readings.</param>
/// <param name="Hashes">The files with their hashes, in the order of the set.</param>
public sealed record AssembledSet(
    FitReadings? Readings,
    ImmutableArray<Problem> Problems,
    ImmutableArray<CalibratedReading> Hashes
);
