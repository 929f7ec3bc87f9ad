namespace GlowMix.Predictions;

/// <summary>One figure of a prediction: its name, as every file, table and option writes it, and its unit.</summary>
/// <param name="Name">Dots are nesting; a figure at stated minutes ends in the minutes in brackets.</param>
/// <param name="Unit">As printed behind the number; empty where the figure has none.</param>
/// <param name="Index">Place in <see cref="FigureCatalogue.All"/>.</param>
/// <param name="AtMinutes">Minutes after the last light, for figures of a decay.</param>
public sealed record Figure(string Name, string Unit, int Index, double? AtMinutes = null)
{
    /// <summary>The name without the minutes.</summary>
    public string Family => AtMinutes is null ? Name : Name[..Name.IndexOf('[', StringComparison.Ordinal)];

    /// <inheritdoc/>
    public override string ToString() => Name;
}
