namespace GlowMix.Readings;

/// <summary>A unit that wavelengths are written in.</summary>
public enum LengthUnit
{
    /// <summary>nm.</summary>
    Nanometre,

    /// <summary>µm.</summary>
    Micrometre,

    /// <summary>Å, a tenth of a nm.</summary>
    Angstrom,

    /// <summary>m.</summary>
    Metre,
}
