using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Recipes;

namespace GlowMix.Pieces;

/// <summary>A recipe with its materials looked up and its defaults filled in: all that the model needs. Immutable.</summary>
public sealed record Piece
{
    /// <summary>Share of the board that LED windows cover where a recipe does not say. Assumed.</summary>
    public const double AssumedWindowShare = 0.05;

    /// <summary>The recipe it was made from.</summary>
    public required Recipe Recipe { get; init; }

    /// <summary>The resin.</summary>
    public required Resin Resin { get; init; }

    /// <summary>The LED.</summary>
    public required Led Led { get; init; }

    /// <summary>Current through each package, mA.</summary>
    public required double DriveMa { get; init; }

    /// <summary>The board.</summary>
    public required Board Board { get; init; }

    /// <summary>Number of packages; null where the recipe does not say.</summary>
    public required int? Count { get; init; }

    /// <summary>Inside length of the channel, mm; null where the recipe does not say.</summary>
    public required double? LengthMm { get; init; }

    /// <summary>Inside width of the channel, mm; null where the recipe does not say.</summary>
    public required double? WidthMm { get; init; }

    /// <summary>From the board upwards.</summary>
    public required ImmutableArray<PieceLayer> Layers { get; init; }

    /// <summary>How full the traps are before the first step.</summary>
    public required ChargeStart Start { get; init; }

    /// <summary>Charge, in order; at least one step.</summary>
    public required ImmutableArray<PieceStep> Steps { get; init; }

    /// <summary>Temperature of the darkness after the charge, °C.</summary>
    public required double DarknessTemperatureC { get; init; }

    /// <summary>The user's visibility limit, mcd/m².</summary>
    public required double LimitMcdPerM2 { get; init; }

    /// <summary>Whether the viewer's side is up while the resin gels: grains then sink to the board.</summary>
    public required bool IsFaceUp { get; init; }

    /// <summary>False takes grains as staying where they were poured: quicker, for a search.</summary>
    public bool IsSettled { get; init; } = true;

    /// <summary>Temperature while mixing and pouring, °C.</summary>
    public required double MixingTemperatureC { get; init; }

    /// <summary>Mix made over and above what the pour takes, %.</summary>
    public required double WastePercent { get; init; }

    /// <summary>Time under vacuum, min.</summary>
    public required double VacuumMin { get; init; }

    /// <summary>The readings that its materials were calibrated by; null without.</summary>
    public Calibration? Calibration { get; init; }

    /// <summary>What the recipe left open and was taken as.</summary>
    public required ImmutableArray<string> TakenAs { get; init; }

    /// <summary>All layers together, mm.</summary>
    public double DepthMm => Layers.Sum(l => l.DepthMm);

    /// <summary>What of it lies over the packages, mm; 0 or less where they stay in air.</summary>
    public double DepthOverPackagesMm => DepthMm - Led.PackageHeightMm.Value;

    /// <summary>Any layer with pigment in it.</summary>
    public bool HasPigment => Layers.Any(l => l.HasPigment);

    /// <summary>Area that one package lights, mm².</summary>
    public double AreaPerPackageMm2 =>
        Count is int count && LengthMm is double length && WidthMm is double width
            ? length * width / count
            : WindowAreaMm2 / AssumedWindowShare;

    /// <summary>Share of the board that LED windows cover.</summary>
    public double WindowShare => WindowAreaMm2 / AreaPerPackageMm2;

    /// <summary>Whether number and size are known, so that lumens and light per area are the piece's own.</summary>
    public bool HasSize => Count is not null && LengthMm is not null && WidthMm is not null;

    private double WindowAreaMm2 => Math.PI * Led.WindowRadiusMm.Value * Led.WindowRadiusMm.Value;
}
