using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>One of the bands of a white LED.</summary>
/// <param name="ShapePerNm">Energy, 1/nm; its integral over nm is 1.</param>
/// <param name="PeakNm">Where it peaks, nm.</param>
/// <param name="Share">Watts of the band over watts of the bare package in air; the three add up to 1.</param>
public sealed record LedBand(Spectrum ShapePerNm, double PeakNm, Sourced<double> Share);
