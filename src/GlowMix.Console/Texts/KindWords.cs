using GlowMix.Materials;

namespace GlowMix.Console.Texts;

/// <summary>The kinds of materials by the words a user has for them.</summary>
internal static class KindWords
{
    /// <summary>All kinds in the order of the light.</summary>
    public static IReadOnlyList<MaterialKind> All => MaterialKindWords.Kinds;

    /// <summary>A kind by its word or that of its folder: 'led' or 'leds'.</summary>
    public static MaterialKind? Find(string word)
    {
        foreach (var kind in All)
        {
            if (
                word.Equals(kind.Word(), StringComparison.OrdinalIgnoreCase)
                || word.Equals(kind.Folder(), StringComparison.OrdinalIgnoreCase)
            )
            {
                return kind;
            }
        }
        return null;
    }
}
