using GlowMix.Console.Tune.Model;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Tune;

/// <summary>The text UI over a recipe in memory.</summary>
internal sealed class TuneRig
{
    public const string Name = "stair-edge.yaml";

    private static readonly Shelf shelf = new();

    public TuneRig(string? text = null, bool holdsAnswers = false)
    {
        text ??= StairEdge;
        Store = new(Name, text);
        Desk = new() { Holds = holdsAnswers };
        Model = new(
            new Bench(
                RecipeDocument.Read(text, Name),
                new KnobBoard(shelf),
                document => PieceAssembly.Of(document, shelf)
            ),
            new RecipeFile(Store, text),
            Desk,
            new CannedPages(),
            new CannedMaps()
        );
        Desk.Model = Model;
        if (!holdsAnswers)
        {
            Desk.AnswerAll();
        }
    }

    public static string StairEdge { get; } = File.ReadAllText(Path.Combine(TopFolder.Path, "recipes", Name));

    public MemoryStore Store { get; }

    public CannedDesk Desk { get; }

    public TuneModel Model { get; }

    public string Text => Model.Bench.Document.Text;

    public void Hold(string keyPath)
    {
        int index = Model.Bench.Knobs.ToList().FindIndex(k => k.KeyPath == keyPath);
        Assert.True(index >= 0, $"no knob {keyPath}");
        Model.Hold(index);
    }

    public string Held => Model.Bench.Held!.Value;

    public void Press(string signs)
    {
        foreach (char sign in signs)
        {
            Model.Press(Stroke.Of(sign));
        }
    }

    public void Press(StrokeKey key, bool shift = false, bool ctrl = false) =>
        Model.Press(new Stroke(key, Shift: shift, Ctrl: ctrl));
}
