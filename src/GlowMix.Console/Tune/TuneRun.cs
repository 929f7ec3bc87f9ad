using GlowMix.Console.Commands;
using GlowMix.Console.Tune.Model;
using GlowMix.Console.Tune.Views;
using GlowMix.Documents;
using Terminal.Gui.App;

namespace GlowMix.Console.Tune;

/// <summary>One run of the text UI on a terminal. The only class that loads the toolkit.</summary>
internal static class TuneRun
{
    private static readonly TimeSpan diskEvery = TimeSpan.FromSeconds(1);

    /// <summary>Runs until the user leaves.</summary>
    /// <param name="text">The recipe's text.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <param name="runner">The model.</param>
    /// <param name="ascii">Letters of ASCII only.</param>
    /// <param name="hasColour">False for none at all.</param>
    /// <returns>An exit code.</returns>
    public static int On(
        FileText text,
        Surroundings surroundings,
        IRecipeRunner runner,
        bool ascii,
        bool hasColour
    )
    {
        using var rescue = new TerminalRescue();
        using IApplication app = Application.Create();
        return On(app, text, surroundings, runner, ascii, hasColour);
    }

    /// <summary>The same with a toolkit that was made elsewhere.</summary>
    /// <param name="app">The toolkit; not begun.</param>
    /// <param name="text">The recipe's text.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <param name="runner">The model.</param>
    /// <param name="ascii">Letters of ASCII only.</param>
    /// <param name="hasColour">False for none at all.</param>
    /// <returns>An exit code.</returns>
    public static int On(
        IApplication app,
        FileText text,
        Surroundings surroundings,
        IRecipeRunner runner,
        bool ascii,
        bool hasColour
    )
    {
        var files = FolderMaterials.BesideFile(text.Name, surroundings);
        var predictor = runner.PredictorFor(files);
        var loop = new WakefulLoop(app);
        TuneScreen? screen = null;
        TuneModel? model = null;
        var foreteller = new ModelForeteller(predictor);
        void Post(Action action) =>
            loop.Post(() =>
            {
                action();
                screen?.Refresh();
            });

        using var desk = new ForetellingDesk(foreteller, outlook => Post(() => model?.Take(outlook)));
        using var pages = new Pages(predictor, Post);
        using var maps = new MapWork(foreteller, Post);
        model = new(
            Bench.Of(text, predictor, files),
            new RecipeFile(new RecipeStore(text.Name, surroundings), text.Text),
            desk,
            pages,
            maps
        );
        model.File.OfferAutosave(model);
        try
        {
            screen = new TuneScreen(model, ascii, hasColour);
            app.AddTimeout(
                diskEvery,
                () =>
                {
                    if (model.File.LookAtDisk(model))
                    {
                        screen.Refresh();
                    }
                    model.File.Autosave(model);
                    return true;
                }
            );
            // A signal from outside ends the run as a key would, without a question.
            using var stopped = surroundings.Stop.Register(() => loop.Post(() => app.RequestStop()));
            app.Run(screen);
        }
        finally
        {
            // Whatever ended the run: what is not saved stays beside the file.
            model.File.Autosave(model);
            screen?.Dispose();
        }
        return ExitCode.Done;
    }
}
