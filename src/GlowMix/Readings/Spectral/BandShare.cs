namespace GlowMix.Readings.Spectral;

/// <summary>What a band holds of the power from 380 to 780 nm.</summary>
/// <param name="Band">The band.</param>
/// <param name="PowerPercent">Its share of the power, %.</param>
public sealed record BandShare(SpectralBand Band, double PowerPercent);
