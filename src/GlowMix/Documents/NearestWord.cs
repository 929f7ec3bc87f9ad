namespace GlowMix.Documents;

/// <summary>Finds the word a user most likely meant.</summary>
public static class NearestWord
{
    /// <summary>
    /// The known word that continues the one found after an underscore ('depth' → 'depth_mm'), else the one with the
    /// fewest typing slips between them; the earlier of equals; null if none is near.
    /// </summary>
    public static string? Of(string found, IEnumerable<string> known)
    {
        // A word as long as this is no slip, and the comparison takes time in proportion.
        if (found.Length is 0 or > 60)
        {
            return null;
        }
        string? nearest = null;
        int fewest = Math.Max(1, found.Length / 3) + 1;
        foreach (string word in known)
        {
            if (word.StartsWith(found + "_", StringComparison.OrdinalIgnoreCase))
            {
                return word;
            }
            int slips = Slips(found.ToLowerInvariant(), word);
            if (slips < fewest)
            {
                (nearest, fewest) = (word, slips);
            }
        }
        return nearest;
    }

    /// <summary>Letters left out, added, replaced or swapped with their neighbour (optimal string alignment distance).</summary>
    internal static int Slips(string a, string b)
    {
        var distance = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            for (int j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    distance[i, j] = i + j;
                    continue;
                }
                int replaced = distance[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                int leftOut = Math.Min(distance[i - 1, j], distance[i, j - 1]) + 1;
                distance[i, j] = Math.Min(replaced, leftOut);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    distance[i, j] = Math.Min(distance[i, j], distance[i - 2, j - 2] + 1);
                }
            }
        }
        return distance[a.Length, b.Length];
    }
}
