using GlowMix.Console.Commands;
using GlowMix.Console.Tune.Model;
using GlowMix.Documents;

namespace GlowMix.Console.Tune;

/// <summary>One run of the text UI in lines.</summary>
internal static class PlainRun
{
    /// <summary>Runs until the user leaves or the input ends.</summary>
    public static int On(FileText text, Surroundings surroundings, IRecipeRunner runner, bool ascii)
    {
        var files = FolderMaterials.BesideFile(text.Name, surroundings);
        var predictor = runner.PredictorFor(files);
        var foreteller = new ModelForeteller(predictor);
        var desk = new PatientDesk(foreteller);
        using var pages = new Pages(predictor, action => action(), isPatient: true);
        var model = new TuneModel(
            Bench.Of(text, predictor, files),
            new RecipeFile(new RecipeStore(text.Name, surroundings), text.Text),
            desk,
            pages,
            new NoMaps()
        );
        desk.Answer = model.Take;
        model.AskAgain();
        var lines = new PlainLines(
            model,
            surroundings.Sheet(ascii),
            document => foreteller.Banded(document, surroundings.Stop)
        );
        lines.Begin();
        while (true)
        {
            Prompt(surroundings);
            if (surroundings.ReadLine() is not { } line || !lines.Do(line))
            {
                // The end of the input is no wish to lose what was turned.
                model.File.Autosave(model);
                return ExitCode.Done;
            }
            surroundings.Stop.ThrowIfCancellationRequested();
        }
    }

    private static void Prompt(Surroundings surroundings)
    {
        if (surroundings.InputIsTerminal)
        {
            surroundings.Out.Write("tune: ");
        }
        surroundings.Out.Flush();
    }
}
