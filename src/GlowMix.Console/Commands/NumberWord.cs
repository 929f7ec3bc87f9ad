using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>Numbers of the command line, read as files' numbers are: the parser's own would take '3,5' for 35.</summary>
internal static class NumberWord
{
    /// <summary>Reads the numbers of an option.</summary>
    /// <param name="option">Its name, for the message.</param>
    /// <param name="words">What the user wrote.</param>
    /// <param name="numbers">The numbers; empty if one is none.</param>
    /// <returns>What is wrong, or null.</returns>
    public static string? Read(string option, IReadOnlyList<string> words, out double[] numbers)
    {
        numbers = new double[words.Count];
        for (int i = 0; i < numbers.Length; i++)
        {
            if (!NumberText.TryRead(words[i], out numbers[i]))
            {
                numbers = [];
                string hint = NumberText.Hint(words[i]) is { } text ? $"; {text}" : "";
                return $"{option}: {ProblemTexts.Quote(words[i])} is not a number{hint}";
            }
        }
        return null;
    }
}
