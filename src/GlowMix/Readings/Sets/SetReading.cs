using GlowMix.Documents;
using GlowMix.Readings.Decay;
using GlowMix.Recipes;

namespace GlowMix.Readings.Sets;

/// <summary>One reading of a set, and which state of the recipe it belongs to. What is null is as in the recipe.</summary>
/// <param name="File">Its file, relative to the set.</param>
/// <param name="State">What was read.</param>
public sealed record SetReading(string File, ReadingState State)
{
    /// <summary>Depth over the board, mm: of all the clear resin, or of the one layer with pigment.</summary>
    public double? DepthMm { get; init; }

    /// <summary>Pigment mass over the mass of the mix of the one layer with pigment, %.</summary>
    public double? LoadingPercent { get; init; }

    /// <summary>1, 2 or 3: the test tile of half, once, one and a half times the recipe's loading.</summary>
    public int? Tile { get; init; }

    /// <summary>The charge before a decay.</summary>
    public RecipeCharge? Charge { get; init; }

    /// <summary>Temperature of the darkness after it, °C.</summary>
    public double? DarknessTemperatureC { get; init; }

    /// <summary>Noise of the meter, standard deviation in %.</summary>
    public double? NoisePercent { get; init; }

    /// <summary>Step of the meter's display, in the file's unit.</summary>
    public double? DisplayStep { get; init; }

    /// <summary>When the light went off, in minutes of the file's own clock.</summary>
    public double? DarkFromMinutes { get; init; }

    /// <summary>How a lux meter looked at the glow; null for a luminance meter.</summary>
    public MeterGeometry? Geometry { get; init; }

    /// <summary>Where it stands in the set; null for one that was named on the command line.</summary>
    public Place? Place { get; init; }
}
