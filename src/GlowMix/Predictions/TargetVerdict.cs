using GlowMix.Recipes;

namespace GlowMix.Predictions;

/// <summary>A target of the recipe, and how the prediction stands to it.</summary>
public sealed record TargetVerdict
{
    /// <summary>As the recipe has it.</summary>
    public required RecipeTarget Target { get; init; }

    /// <summary>The figure it is about.</summary>
    public required Figure Figure { get; init; }

    /// <summary>The likely figure; null if it does not exist.</summary>
    public required double? Value { get; init; }

    /// <summary>Met, missed, too close or not judged.</summary>
    public required TargetState State { get; init; }

    /// <summary>Share of the draws that meet it, 0 to 1; null where nothing was drawn or it is not judged.</summary>
    public double? ShareOfDraws { get; init; }

    /// <summary>
    /// From the nearest bound to the likely figure, in the figure's unit, positive where the target is met; null if it is not
    /// judged.
    /// </summary>
    public double? Margin { get; init; }

    /// <summary>Why it is not judged; null if it is.</summary>
    public string? Reason { get; init; }

    /// <summary>Where it is too close: the one reading that would narrow the band most.</summary>
    public string? DecidedBy { get; init; }
}
