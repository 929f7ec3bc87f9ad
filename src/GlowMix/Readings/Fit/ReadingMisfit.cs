using System.Collections.Immutable;

namespace GlowMix.Readings.Fit;

/// <summary>How well the fitted model follows one reading.</summary>
/// <param name="Name">Its file.</param>
/// <param name="State">What was read, in words.</param>
/// <param name="IsDecay">Read at minutes; else at wavelengths in nm.</param>
/// <param name="ResidualsPercent">Read less model, % of the model, at each place in order.</param>
/// <param name="RmsPercent">Their root mean square.</param>
/// <param name="NoisePercent">What the reading's own noise would make of that.</param>
/// <param name="TimesItsNoise">The misfit in units of the noise: 1 where noise is all there is.</param>
/// <param name="IsLackOfFit">Further off than noise makes it once in a hundred times.</param>
public sealed record ReadingMisfit(
    string Name,
    string State,
    bool IsDecay,
    ImmutableArray<(double At, double Percent)> ResidualsPercent,
    double RmsPercent,
    double NoisePercent,
    double TimesItsNoise,
    bool IsLackOfFit
);
