using GlowMix.Documents;

namespace GlowMix.Console.Commands;

/// <summary>The recipe file of a command that takes exactly one.</summary>
internal static class OneRecipe
{
    /// <summary>Reads the file.</summary>
    /// <param name="names">What the user named.</param>
    /// <param name="command">The command's name.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <param name="code">The exit code if there is no text.</param>
    /// <returns>The text, or null when the user has been told why there is none.</returns>
    public static FileText? Read(string[] names, string command, Surroundings surroundings, out int code)
    {
        code = ExitCode.Usage;
        if (names.Length != 1)
        {
            surroundings.Complain(
                names.Length == 0
                    ? $"{command} needs a recipe file"
                    : $"{command} takes one recipe, not {names.Length}"
            );
            if (names.Length == 0)
            {
                foreach (string recipe in RecipesNearby.Find(surroundings))
                {
                    surroundings.Complain("  " + recipe);
                }
            }
            surroundings.Complain($"Try 'glowmix {command} --help'.");
            return null;
        }
        var text = UserFile.Read(names[0], surroundings);
        if (text.Problem is { } unreadable)
        {
            code = Problems.Tell([unreadable], surroundings);
            return null;
        }
        return text;
    }
}
