namespace GlowMix.Recipes;

/// <summary>Names as a recipe may hold them: words of the letters a to z and digits, with single marks between them.</summary>
internal static class PlainName
{
    /// <summary>Words of a–z and 0–9, joined by one of some marks each.</summary>
    public static bool IsWords(string text, string joints)
    {
        bool inWord = false;
        foreach (char letter in text)
        {
            bool isOfWord = char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter);
            if (!isOfWord && !(inWord && joints.Contains(letter)))
            {
                return false;
            }
            inWord = isOfWord;
        }
        return inWord;
    }
}
