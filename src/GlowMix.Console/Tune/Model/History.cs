using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>
/// All states since the start, to go back and forth in without end. Turns of one knob in a row are one: a held key is one turn.
/// </summary>
internal sealed class History
{
    private readonly List<Revision> states = [];
    private int at;
    private bool isOpen;

    /// <param name="start">The recipe as it was opened.</param>
    public History(RecipeDocument start) => states.Add(new(start, "", "", ""));

    /// <summary>The present state.</summary>
    public Revision Present => states[at];

    /// <summary>The state before the last turn; null at the start.</summary>
    public Revision? Before => at > 0 ? states[at - 1] : null;

    /// <summary>A further turn of the same knob goes on with the last one.</summary>
    public bool IsOpen => isOpen;

    /// <summary>Turns that can be undone.</summary>
    public int UndoCount => at;

    /// <summary>Turns that can be done again.</summary>
    public int RedoCount => states.Count - 1 - at;

    /// <summary>Goes on to a new state; what was undone before is forgotten.</summary>
    public void Add(Revision next)
    {
        bool goesOn = isOpen && at > 0 && Present.KeyPath == next.KeyPath && next.KeyPath.Length > 0;
        int keep = goesOn ? at : at + 1;
        states.RemoveRange(keep, states.Count - keep);
        states.Add(next);
        at = keep;
        isOpen = true;
        // Turned back to where the turn began: there was none.
        if (goesOn && next.Document.Text == states[at - 1].Document.Text)
        {
            states.RemoveAt(at);
            at--;
            isOpen = false;
        }
    }

    /// <summary>The next turn is one of its own, even of the same knob.</summary>
    public void Close() => isOpen = false;

    /// <summary>One turn back.</summary>
    public bool Undo()
    {
        isOpen = false;
        return at > 0 && at-- > 0;
    }

    /// <summary>One turn forth.</summary>
    public bool Redo()
    {
        isOpen = false;
        return at < states.Count - 1 && ++at > 0;
    }
}
