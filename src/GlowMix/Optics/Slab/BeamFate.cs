namespace GlowMix.Optics.Slab;

/// <summary>Where a collimated beam's unit of flux went.</summary>
/// <param name="Light">All of it, scattered or not.</param>
/// <param name="ReflectedByFace">Share that the face sent back at once; part of what escaped.</param>
/// <param name="DirectAtFloor">Share that meets the floor without having been scattered or absorbed, at its first arrival.</param>
public sealed record BeamFate(SourceFate Light, double ReflectedByFace, double DirectAtFloor);
