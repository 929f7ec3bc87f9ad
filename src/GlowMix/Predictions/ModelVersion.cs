namespace GlowMix.Predictions;

/// <summary>Which model a figure is from.</summary>
public static class ModelVersion
{
    /// <summary>
    /// One more whenever a change of the program, or of a constant in it, moves a figure: kept figures then tell that it was
    /// the program and not the recipe.
    /// </summary>
    public const int Number = 5;
}
