namespace GlowMix.Recipes;

/// <summary>What the value of a recipe's key is.</summary>
public enum RecipeKeyKind
{
    /// <summary>A number within the key's range.</summary>
    Number,

    /// <summary>A whole number within the key's range.</summary>
    WholeNumber,

    /// <summary>One of the minutes at which the decay is told, <see cref="DecayMinutes"/>.</summary>
    Minutes,

    /// <summary>One of the key's words.</summary>
    Word,

    /// <summary>A material by its name, or the path of its file.</summary>
    Material,

    /// <summary>Free text on one line.</summary>
    Text,

    /// <summary>A list of words or numbers.</summary>
    List,
}
