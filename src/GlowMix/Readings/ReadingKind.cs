namespace GlowMix.Readings;

/// <summary>What a file of readings holds.</summary>
public enum ReadingKind
{
    /// <summary>Light over wavelength.</summary>
    Spectrum,

    /// <summary>Light over time.</summary>
    Decay,
}
