namespace GlowMix.Predictions;

/// <summary>Luminance after the last light, with its band; for plots and tables of one's own.</summary>
/// <param name="Minutes">Rising, evenly spaced in the logarithm.</param>
/// <param name="LowMcdPerM2">Least of the bounding runs at each minute.</param>
/// <param name="LikelyMcdPerM2">Likely.</param>
/// <param name="HighMcdPerM2">Greatest.</param>
public sealed record DecayCurve(
    IReadOnlyList<double> Minutes,
    IReadOnlyList<double> LowMcdPerM2,
    IReadOnlyList<double> LikelyMcdPerM2,
    IReadOnlyList<double> HighMcdPerM2
);
