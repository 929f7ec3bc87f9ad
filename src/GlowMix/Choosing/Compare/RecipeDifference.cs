namespace GlowMix.Choosing.Compare;

/// <summary>Something that one recipe says otherwise than another.</summary>
/// <param name="KeyPath">
/// Full path of the key, layers by name; the path of a layer or a charge step where the other recipe has none such; a material's
/// name behind 'file:' where two files of one name differ.
/// </param>
/// <param name="Before">What the first says, as written; null where it says nothing.</param>
/// <param name="After">What the second says, likewise.</param>
/// <param name="IsYardstick">It is a target, a limit, a tolerance or a charge: what a piece is held against, not the piece.</param>
public sealed record RecipeDifference(string KeyPath, string? Before, string? After, bool IsYardstick)
{
    /// <summary>The layer it is about, or null.</summary>
    public string? Layer => KeyPath.Split('.') is ["layers", var name, ..] ? name : null;

    /// <summary>The last word of the path.</summary>
    public string Name => KeyPath[(KeyPath.LastIndexOf('.') + 1)..];
}
