namespace GlowMix.Predictions;

/// <summary>How sure a figure is. Null where the figure does not exist in that run.</summary>
/// <param name="Low">Least of the bounding runs, or 10 % of the draws.</param>
/// <param name="Likely">The run with every number as it stands.</param>
/// <param name="High">Greatest of the bounding runs, or 90 % of the draws.</param>
public readonly record struct Band(double? Low, double? Likely, double? High);
