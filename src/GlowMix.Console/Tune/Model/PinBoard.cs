using System.Collections.Immutable;

namespace GlowMix.Console.Tune.Model;

/// <summary>Pinned states, a to z, and the one flipped to last.</summary>
internal sealed class PinBoard(TuneModel model)
{
    private const int Most = 26;
    private int last = -1;

    /// <summary>All of them.</summary>
    public ImmutableArray<Pin> All { get; private set; } = [];

    /// <summary>Pins the present state.</summary>
    /// <returns>What to tell.</returns>
    public string Add()
    {
        var document = model.Bench.Document;
        if (All.FirstOrDefault(p => p.Document.Text == document.Text) is { } same)
        {
            return $"This state is pinned already: {same.Name}.";
        }
        if (model.Bench.Piece is null)
        {
            return "A recipe with errors cannot be pinned.";
        }
        if (All.Length == Most)
        {
            return "All letters are taken; pins last until you quit.";
        }
        var pin = new Pin((char)('a' + All.Length), document);
        All = All.Add(pin);
        last = All.Length - 1;
        return $"Pinned as {pin.Name}. f flips through the pins, c shows them side by side.";
    }

    /// <summary>The next pin to flip to; null without any.</summary>
    public Pin? Next()
    {
        if (All.IsEmpty)
        {
            return null;
        }
        // Not to where one is already.
        for (int i = 1; i <= All.Length; i++)
        {
            int at = (last + i) % All.Length;
            if (All[at].Document.Text != model.Bench.Document.Text)
            {
                last = at;
                return All[at];
            }
        }
        return All[last];
    }
}
