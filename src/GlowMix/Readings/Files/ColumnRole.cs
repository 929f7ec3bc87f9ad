namespace GlowMix.Readings.Files;

/// <summary>What a header says of a column.</summary>
internal enum ColumnRole
{
    /// <summary>Nothing that is understood.</summary>
    Unknown,

    /// <summary>Wavelengths.</summary>
    Wavelength,

    /// <summary>Times.</summary>
    Time,

    /// <summary>A running number.</summary>
    Index,

    /// <summary>Light.</summary>
    Light,

    /// <summary>Light from which the dark reading has been taken.</summary>
    Net,

    /// <summary>Light from which nothing has been taken.</summary>
    Raw,

    /// <summary>A dark reading.</summary>
    Dark,

    /// <summary>A reading of a reference.</summary>
    Reference,

    /// <summary>A share of light: transmittance, reflectance, absorbance.</summary>
    Share,

    /// <summary>Something else: spread, temperature, flags.</summary>
    Aside,
}
