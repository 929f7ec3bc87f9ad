using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tests.Tune.Model;

public class RandomStrokesTests
{
    private static readonly Stroke[] strokes =
    [
        .. Enum.GetValues<StrokeKey>().Select(key => new Stroke(key)),
        .. Enum.GetValues<StrokeKey>().Select(key => new Stroke(key, Shift: true)),
        .. Enum.GetValues<StrokeKey>().Select(key => new Stroke(key, Ctrl: true)),
        .. "0123456789.-+[]{}xurpfcmgbo?<>sSqdtkow,eß語".Select(Stroke.Of),
    ];

    /// <summary>Ten thousand keys in all.</summary>
    [Theory]
    [InlineData("stair-edge.yaml", 1)]
    [InlineData("two-glow-plaque.yaml", 2)]
    [InlineData("shortest.yaml", 3)]
    [InlineData("clear-tread.yaml", 4)]
    public void Random_keys_break_nothing_and_undo_leads_back_to_the_start(string recipe, uint seed)
    {
        string text = File.ReadAllText(Path.Combine(TopFolder.Path, "recipes", recipe));
        var rig = new TuneRig(text);
        uint state = seed;
        for (int i = 0; i < Count; i++)
        {
            // Knuth's and Lewis' 'quick and dirty' generator (Press et al. 1992, section 7.1): the same keys in every run.
            state = (state * 1664525) + 1013904223;
            rig.Model.Press(strokes[(int)((state >> 8) % (uint)strokes.Length)]);
            Assert.NotNull(rig.Model.Foot);
            if (rig.Model.HasEnded)
            {
                rig = new TuneRig(text);
            }
        }
        rig.Press(StrokeKey.Escape);
        rig.Press(StrokeKey.Escape);
        rig.Press(StrokeKey.Escape);
        while (rig.Model.Bench.UndoCount > 0)
        {
            rig.Press("u");
        }
        Assert.Equal(text, rig.Text);
    }

    private const int Count = 2500;
}
