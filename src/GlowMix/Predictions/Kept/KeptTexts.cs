using GlowMix.Documents;

namespace GlowMix.Predictions.Kept;

/// <summary>The words of what can be wrong with a figures file.</summary>
public static class KeptTexts
{
    /// <summary>A merge left its marks.</summary>
    public const string Conflict = "a merge conflict is in it";

    /// <summary>The checksum does not fit the lines.</summary>
    public const string ByHand = "it was changed by hand";

    /// <summary>The bands are of nothing known.</summary>
    public static string BandsOf(string found) =>
        $"bands_of is {ProblemTexts.Quote(found)}; allowed: '512 draws', '{KeptFiguresText.BoundingRuns}'";
}
