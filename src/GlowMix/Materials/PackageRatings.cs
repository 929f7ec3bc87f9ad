namespace GlowMix.Materials;

/// <summary>What the user tells of an LED package that has no file. What is null is taken from the nearest shipped LED.</summary>
public sealed record PackageRatings
{
    /// <summary>Luminous flux of one bare package at <see cref="AtMa"/>, lm, above 0.</summary>
    public required double FluxLm { get; init; }

    /// <summary>The current the flux holds for, mA, above 0.</summary>
    public required double AtMa { get; init; }

    /// <summary>Doubt of the flux.</summary>
    public Doubt FluxDoubt { get; init; }

    /// <summary>Greatest steady current, mA; without it the rated current is the greatest that is allowed.</summary>
    public double? MaxMa { get; init; }

    /// <summary>Radius of the emitting window, mm.</summary>
    public double? WindowRadiusMm { get; init; }

    /// <summary>Height of the package over the board, mm.</summary>
    public double? PackageHeightMm { get; init; }

    /// <summary>Longer side, mm.</summary>
    public double? PackageLengthMm { get; init; }

    /// <summary>Shorter side, mm.</summary>
    public double? PackageWidthMm { get; init; }
}
