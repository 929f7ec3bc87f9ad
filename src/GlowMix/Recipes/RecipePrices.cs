namespace GlowMix.Recipes;

/// <summary>What the materials cost, in the user's currency.</summary>
public sealed record RecipePrices
{
    /// <summary>Mixed resin, per kg.</summary>
    public double? ResinPerKg { get; init; }

    /// <summary>Pigment, per kg.</summary>
    public double? PigmentPerKg { get; init; }
}
