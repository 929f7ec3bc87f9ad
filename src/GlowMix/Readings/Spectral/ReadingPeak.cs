namespace GlowMix.Readings.Spectral;

/// <summary>A peak of a spectrum.</summary>
/// <param name="Nm">Wavelength of the top, nm.</param>
/// <param name="ShareOfHighest">Height over that of the highest peak, 0 to 1.</param>
/// <param name="FullWidthNm">Width at half its height, nm; null where the spectrum does not fall that far at both sides.</param>
public sealed record ReadingPeak(double Nm, double ShareOfHighest, double? FullWidthNm);
