using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>What a pigment's sheet says of its decay: the sample, the charge and a few points.</summary>
public sealed record DecaySheet
{
    /// <summary>Pigment mass over mass of the mix, percent.</summary>
    public required Sourced<double> LoadingPercent { get; init; }

    /// <summary>Depth of the sample, mm.</summary>
    public required Sourced<double> DepthMm { get; init; }

    /// <summary>What the sample lies on, a board of the shelf.</summary>
    public required Sourced<string> Backing { get; init; }

    /// <summary>What the pigment is in, a resin of the shelf.</summary>
    public required Sourced<string> Resin { get; init; }

    /// <summary>The light that charges it, a lamp of the shelf.</summary>
    public required Sourced<string> Lamp { get; init; }

    /// <summary>Illuminance on the sample, lx.</summary>
    public required Sourced<double> IlluminanceLx { get; init; }

    /// <summary>Time of charge, min.</summary>
    public required Sourced<double> Minutes { get; init; }

    /// <summary>Temperature of charge and decay, °C.</summary>
    public required Sourced<double> TemperatureC { get; init; }

    /// <summary>Luminance after minutes in the dark, ascending minutes, at least two.</summary>
    public required Sourced<ImmutableArray<SheetPoint>> Points { get; init; }

    /// <summary>The last time the sheet speaks of, min: beyond it a prediction extrapolates.</summary>
    public double ReachMinutes => Points.Value[^1].Minutes;
}
