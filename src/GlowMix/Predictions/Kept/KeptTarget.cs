namespace GlowMix.Predictions.Kept;

/// <summary>What became of a target.</summary>
/// <param name="Figure">The full name of the figure it is about.</param>
/// <param name="State">Met, missed, too close or not judged.</param>
public sealed record KeptTarget(string Figure, TargetState State);
