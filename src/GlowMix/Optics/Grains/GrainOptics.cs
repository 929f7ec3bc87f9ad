using System.Numerics;

namespace GlowMix.Optics.Grains;

/// <summary>What the size of a grain is joined with at one wavelength to make a sphere of the Lorenz–Mie series.</summary>
/// <param name="Index">Index of the grain over that of the resin, n + ik.</param>
/// <param name="SizeParameterPerUm">Size parameter of a grain of 1 µm diameter: π n_resin / λ, 1/µm.</param>
internal readonly record struct GrainOptics(Complex Index, double SizeParameterPerUm);
