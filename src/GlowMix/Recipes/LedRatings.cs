namespace GlowMix.Recipes;

/// <summary>What a label or a sheet says of one LED package.</summary>
public sealed record LedRatings
{
    /// <summary>Luminous flux of one package in air at <see cref="AtMa"/>, lm.</summary>
    public required double FluxLm { get; init; }

    /// <summary>Two standard deviations of the flux, % of it.</summary>
    public double? FluxTolerancePercent { get; init; }

    /// <summary>The current the flux holds for, mA.</summary>
    public required double AtMa { get; init; }

    /// <summary>The greatest steady current, mA.</summary>
    public double? MaxMa { get; init; }

    /// <summary>Radius of the emitting window, mm.</summary>
    public double? WindowRadiusMm { get; init; }

    /// <summary>Height of the package above the board, mm.</summary>
    public double? PackageHeightMm { get; init; }

    /// <summary>Length of the package, mm.</summary>
    public double? PackageLengthMm { get; init; }

    /// <summary>Width of the package, mm.</summary>
    public double? PackageWidthMm { get; init; }
}
