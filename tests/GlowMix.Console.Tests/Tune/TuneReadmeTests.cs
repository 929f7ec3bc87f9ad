using GlowMix.Console.Tests.Tune.Views;
using GlowMix.Console.Tune.Model;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Recipes;
using Terminal.Gui.Input;

namespace GlowMix.Console.Tests.Tune;

public class TuneReadmeTests
{
    private const string Heading = "## Turning the numbers by hand";
    private const string Indent = "    ";

    [Fact]
    public void The_screen_in_the_readme_is_the_programs()
    {
        var predictor = new Predictor(new Shelf());
        var desk = new PatientDesk(new ModelForeteller(predictor));
        var store = new MemoryStore(TuneRig.Name, TuneRig.StairEdge);
        var model = new TuneModel(
            new Bench(
                RecipeDocument.Read(TuneRig.StairEdge, TuneRig.Name),
                new KnobBoard(predictor.Shelf),
                document => PieceAssembly.Of(document, predictor.Shelf)
            ),
            new RecipeFile(store, TuneRig.StairEdge),
            desk,
            new CannedPages(),
            new CannedMaps()
        );
        desk.Answer = model.Take;
        model.AskAgain();
        using var screen = new Screen(model, 80, 24);
        foreach (var key in (Key[])[Key.CursorDown, Key.CursorRight, Key.CursorRight])
        {
            screen.Press(key);
        }
        Assert.Equal(InReadme(), screen.Text.TrimEnd('\n').Split('\n').Select(line => line.TrimEnd()));
    }

    private static IEnumerable<string> InReadme() =>
        File.ReadAllLines(Path.Combine(TopFolder.Path, "README.md"))
            .SkipWhile(line => line != Heading)
            .SkipWhile(line => !line.StartsWith(Indent, StringComparison.Ordinal))
            .TakeWhile(line => line.StartsWith(Indent, StringComparison.Ordinal) || line.Length == 0)
            .Reverse()
            .SkipWhile(line => line.Length == 0)
            .Reverse()
            .Select(line => line.Length == 0 ? "" : line[Indent.Length..]);
}
