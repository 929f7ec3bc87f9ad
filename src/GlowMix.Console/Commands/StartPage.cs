using GlowMix.Console.Texts;

namespace GlowMix.Console.Commands;

/// <summary>`glowmix` alone: what it is for, and where to begin.</summary>
internal static class StartPage
{
    private const int MostRecipes = 12;

    /// <summary>Prints it.</summary>
    public static int Print(Surroundings surroundings)
    {
        var sheet = surroundings.Sheet();
        var nearby = RecipesNearby.Find(surroundings);
        string recipe = nearby.Count > 0 ? nearby[0] : "RECIPE.yaml";
        sheet.Paragraph(
            "GlowMix tells, before the resin is poured, how white and bright a potted LED board will be, how its "
                + "afterglow pigment will glow, and what to weigh out."
        );
        sheet.Blank();
        sheet.Row("Try", $"glowmix predict {recipe}");
        sheet.Row("", $"glowmix check {recipe}");
        sheet.Row("", "glowmix materials");
        sheet.Row("", "and 'glowmix --help' for the rest");
        sheet.Blank();
        if (nearby.Count == 0)
        {
            sheet.Row("Recipes", "none in this folder or in its folder 'recipes'");
        }
        for (int i = 0; i < Math.Min(nearby.Count, MostRecipes); i++)
        {
            sheet.Row(i == 0 ? "Recipes" : "", nearby[i]);
        }
        if (nearby.Count > MostRecipes)
        {
            sheet.Row("", $"and {nearby.Count - MostRecipes} more");
        }
        sheet.Blank();
        sheet.Row("Caution", Cautions.InFull);
        return ExitCode.Done;
    }
}
