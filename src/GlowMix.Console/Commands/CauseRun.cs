using GlowMix.Choosing.Draws;
using GlowMix.Console.Tables;
using GlowMix.Console.Texts;
using GlowMix.Recipes;

namespace GlowMix.Console.Commands;

/// <summary>`predict --causes`: what to measure first, instead of the figures.</summary>
internal sealed class CauseRun(Surroundings surroundings, IRecipeRunner runner)
{
    /// <summary>Studies recipes one after the other.</summary>
    /// <param name="names">The files.</param>
    /// <param name="isJson">For programs.</param>
    /// <param name="isPlain">Letters of ASCII only.</param>
    public int Run(string[] names, bool isJson, bool isPlain)
    {
        int code = ExitCode.Done;
        var studies = new List<(string Recipe, CauseStudy Study)>();
        foreach (string name in names)
        {
            surroundings.Stop.ThrowIfCancellationRequested();
            var text = UserFile.Read(name, surroundings);
            if (text.Problem is { } unreadable)
            {
                code = Math.Max(code, Problems.Tell([unreadable], surroundings));
                continue;
            }
            using var progress = new ProgressLine(surroundings, "runs");
            var outcome = runner.Causes(
                text,
                FolderMaterials.BesideFile(name, surroundings),
                progress.Show,
                surroundings.Stop
            );
            progress.Dispose();
            code = Math.Max(code, Problems.Tell(outcome.Problems, surroundings));
            if (outcome.Study is not { } study)
            {
                continue;
            }
            studies.Add((name, study));
            if (!isJson)
            {
                var sheet = surroundings.Sheet(isPlain);
                if (studies.Count > 1)
                {
                    sheet.Blank();
                    sheet.Blank();
                }
                string? title = RecipeDocument.Read(text).Recipe?.Title;
                new CauseBars(sheet).Print(title is null ? name : $"{title} ({name})", study);
                surroundings.Out.Flush();
            }
        }
        if (isJson && (names.Length > 1 || studies.Count == 1))
        {
            surroundings.Out.Write(CauseJson.Of(studies, names.Length > 1));
        }
        return code;
    }
}
