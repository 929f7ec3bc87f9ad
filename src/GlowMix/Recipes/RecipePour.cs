namespace GlowMix.Recipes;

/// <summary>The channel that is filled, measured inside.</summary>
public sealed record RecipePour
{
    /// <summary>Length, mm.</summary>
    public double? LengthMm { get; init; }

    /// <summary>Two standard deviations of the length, mm.</summary>
    public double? LengthToleranceMm { get; init; }

    /// <summary>Width, mm.</summary>
    public double? WidthMm { get; init; }

    /// <summary>Two standard deviations of the width, mm.</summary>
    public double? WidthToleranceMm { get; init; }

    /// <summary>Depth at the deep end minus depth at the shallow end, all in the top layer, mm.</summary>
    public double? RunsOutMm { get; init; }

    /// <summary>Where the viewer's side points while the resin gels.</summary>
    public Face? Face { get; init; }
}
