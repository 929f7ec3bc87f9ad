namespace GlowMix.Console.Starts;

/// <summary>All that can be begun.</summary>
internal static class Starters
{
    /// <summary>The recipe, then materials in the order of the light.</summary>
    public static IReadOnlyList<Starter> All { get; } =
    [
        new RecipeStart(),
        new PigmentStart(),
        new ResinStart(),
        new LedStart(),
        new BoardStart(),
        new LampStart(),
    ];
}
