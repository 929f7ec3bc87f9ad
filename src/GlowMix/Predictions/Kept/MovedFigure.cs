namespace GlowMix.Predictions.Kept;

/// <summary>A number that is no longer what was kept.</summary>
/// <param name="Name">The figure, with '.low' or '.high' behind it in a band.</param>
/// <param name="Was">As kept; null if it was not there.</param>
/// <param name="Now">As predicted; null if it is gone.</param>
public sealed record MovedFigure(string Name, decimal? Was, decimal? Now);
