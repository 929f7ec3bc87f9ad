namespace GlowMix.Readings;

/// <summary>What the values of a spectral reading count.</summary>
public enum SpectralUnit
{
    /// <summary>Power per nm in no stated unit.</summary>
    Relative,

    /// <summary>Counts of the instrument: no power until its response is known.</summary>
    Counts,

    /// <summary>Spectral irradiance, W/(m² nm).</summary>
    WPerM2Nm,
}
