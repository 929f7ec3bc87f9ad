namespace GlowMix.Readings;

/// <summary>What the user says of a file; null where it is to be found.</summary>
public sealed record ReadingOptions
{
    /// <summary>Nothing said: all is found.</summary>
    public static ReadingOptions Found { get; } = new();

    /// <summary>Spectrum or decay.</summary>
    public ReadingKind? Kind { get; init; }

    /// <summary>What stands between two columns: a tab, a semicolon, a comma, a bar, or a blank for any run of blanks.</summary>
    public char? Delimiter { get; init; }

    /// <summary>A point or a comma.</summary>
    public char? DecimalMark { get; init; }

    /// <summary>Column of the wavelengths or times: its number from 1, or its name.</summary>
    public string? AlongColumn { get; init; }

    /// <summary>Column of the light: its number from 1, or its name.</summary>
    public string? LightColumn { get; init; }

    /// <summary>Column of a dark reading, to be taken off: its number from 1, or its name.</summary>
    public string? DarkColumn { get; init; }

    /// <summary>First and last line to look at, from 1.</summary>
    public (int First, int Last)? Lines { get; init; }

    /// <summary>Lines that cannot be read are left out, and values for one wavelength averaged.</summary>
    public bool IsLenient { get; init; }

    /// <summary>Unit of the wavelengths.</summary>
    public LengthUnit? WavelengthUnit { get; init; }

    /// <summary>Unit of the light in a spectrum.</summary>
    public SpectralUnit? SpectralUnit { get; init; }

    /// <summary>What makes W/(m² nm), mcd/m² or lx of the values, where a unit is told; else found or 1.</summary>
    public double? LightFactor { get; init; }

    /// <summary>Unit of the times of a decay.</summary>
    public TimeUnit? TimeUnit { get; init; }

    /// <summary>Unit of the light in a decay.</summary>
    public DecayUnit? DecayUnit { get; init; }

    /// <summary>Step of the meter's display, in the file's unit.</summary>
    public double? DisplayStep { get; init; }

    /// <summary>A reading in the dark: it may be the same everywhere, nothing, or below nothing.</summary>
    public bool IsDark { get; init; }

    /// <summary>When the light went off, in minutes of the file's own clock.</summary>
    public double? DarkFromMinutes { get; init; }

    /// <summary>Whether the instrument's response has been taken out.</summary>
    public bool? IsCorrected { get; init; }
}
