namespace GlowMix.Recipes;

/// <summary>One layer, poured in one go.</summary>
public sealed record RecipeLayer
{
    /// <summary>Its name, of its own within the recipe.</summary>
    public required string Name { get; init; }

    /// <summary>Depth, mm; that of the first layer is measured from the board.</summary>
    public required double DepthMm { get; init; }

    /// <summary>Two standard deviations of the depth, mm.</summary>
    public double? DepthToleranceMm { get; init; }

    /// <summary>The pigment: a material's name or the path of its file; null for a clear layer.</summary>
    public string? PigmentName { get; init; }

    /// <summary>Median grain diameter by mass, µm; where the recipe gives the 10 and 90 % ends, computed from them.</summary>
    public double? GrainMedianUm { get; init; }

    /// <summary>Two standard deviations of the median, as a factor.</summary>
    public double? GrainToleranceFactor { get; init; }

    /// <summary>Geometric standard deviation of the grain diameter by mass, 1 or more; computed likewise.</summary>
    public double? GrainGsd { get; init; }

    /// <summary>The grain was given by its 10 and 90 % ends; that these are the ends is assumed.</summary>
    public bool GrainIsFromEnds { get; init; }

    /// <summary>Pigment mass over the mass of the whole mix, 0 to 80 %; null for a clear layer.</summary>
    public double? LoadingPercent { get; init; }

    /// <summary>Two standard deviations of the loading, percentage points.</summary>
    public double? LoadingTolerancePoints { get; init; }
}
