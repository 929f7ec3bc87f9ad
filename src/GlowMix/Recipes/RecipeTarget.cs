namespace GlowMix.Recipes;

/// <summary>Bounds for one figure; at least one of the two is given. Whether there is such a figure is not checked here.</summary>
public sealed record RecipeTarget
{
    /// <summary>The figure's name, such as 'lit.duv'.</summary>
    public required string Figure { get; init; }

    /// <summary>One of <see cref="DecayMinutes"/>, for a figure with a value for each; else null.</summary>
    public double? AtMinutes { get; init; }

    /// <summary>Lower bound in the figure's unit.</summary>
    public double? AtLeast { get; init; }

    /// <summary>Upper bound in the figure's unit.</summary>
    public double? AtMost { get; init; }

    /// <summary>The figure has a value for each of the decay's minutes.</summary>
    internal static bool HasMinutes(string figure) =>
        figure
            is "afterglow.luminance_mcd_m2"
                or "afterglow.scotopic_luminance_mcd_m2"
                or "afterglow.mesopic_luminance_mcd_m2";
}
