namespace GlowMix.Readings.Files;

/// <summary>What a header says of a column.</summary>
internal enum ColumnRole
{
    /// <summary>Nothing that is understood.</summary>
    Unknown,

    /// <summary>Wavelengths.</summary>
    Wavelength,

    /// <summary>Places in a spectrum that are no wavelengths: frequencies, photon energies, wavenumbers.</summary>
    OtherScale,

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

    /// <summary>The mean of other columns.</summary>
    Mean,

    /// <summary>A dark reading.</summary>
    Dark,

    /// <summary>A reading of a reference.</summary>
    Reference,

    /// <summary>A share of light: transmittance, reflectance.</summary>
    Share,

    /// <summary>A logarithm: of light, or absorbance.</summary>
    Logarithm,

    /// <summary>What the eye makes of light, or its weights.</summary>
    Weighted,

    /// <summary>Something else: spread, temperature, flags.</summary>
    Aside,
}
