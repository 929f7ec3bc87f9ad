namespace GlowMix.Optics.Slab;

/// <summary>Where a unit source's light leaves a stack over a black floor.</summary>
/// <param name="Escaped">Into the air; for light from the air what comes back, the face's own reflection included.</param>
/// <param name="Floor">Onto the floor.</param>
public readonly record struct SourceShares(double Escaped, double Floor);
