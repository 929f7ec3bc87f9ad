namespace GlowMix.Readings.Spectral;

/// <summary>One cause of a difference between reading and prediction, turned until it explains the most.</summary>
/// <param name="Words">What is turned: 'depth of layer glow'.</param>
/// <param name="Factor">By which it is turned.</param>
/// <param name="LeftShare">What is then left of the difference, 0 to 1.</param>
public sealed record CauseFound(string Words, double Factor, double LeftShare);
