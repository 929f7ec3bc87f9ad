namespace GlowMix.Readings;

/// <summary>What the values of a decay reading count.</summary>
public enum DecayUnit
{
    /// <summary>In proportion to the luminance, the factor not known.</summary>
    Relative,

    /// <summary>Illuminance at the meter, lx: a luminance only where the geometry is known.</summary>
    Lux,

    /// <summary>Luminance, mcd/m².</summary>
    McdPerM2,
}
