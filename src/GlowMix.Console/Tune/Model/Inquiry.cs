namespace GlowMix.Console.Tune.Model;

/// <summary>What goes before all other keys: a question that must be decided, a text that is being typed.</summary>
internal sealed class Inquiry
{
    private Func<string, string?> entered = _ => null;

    /// <summary>What must be decided first; null if nothing.</summary>
    public Question? Question { get; set; }

    /// <summary>What is being typed; null if nothing is.</summary>
    public Entry? Entry { get; private set; }

    /// <summary>Neither: keys mean what they always mean.</summary>
    public bool IsOver => Question is null && Entry is null;

    /// <summary>Begins to take a text.</summary>
    /// <param name="entry">As it begins.</param>
    /// <param name="enter">Does with the text what is meant; returns why not, null if it did.</param>
    public void Begin(Entry entry, Func<string, string?> enter) => (Entry, entered) = (entry, enter);

    /// <summary>What a key does to the question or the text.</summary>
    /// <param name="stroke">The key.</param>
    /// <param name="changed">Told when a text was taken.</param>
    /// <param name="quit">Told when the user wants to leave from within a text.</param>
    /// <returns>False if nothing is asked and nothing typed.</returns>
    public bool Press(Stroke stroke, Action changed, Action quit)
    {
        if (Question is { } question)
        {
            Answer(question, stroke);
            return true;
        }
        if (Entry is { } entry)
        {
            Write(entry, stroke, changed, quit);
            return true;
        }
        return false;
    }

    private void Answer(Question question, Stroke stroke)
    {
        if (stroke.Key == StrokeKey.Escape)
        {
            Question = null;
            return;
        }
        foreach (var (key, _, act) in question.Answers)
        {
            if (stroke is { Key: StrokeKey.Sign, Ctrl: false } && stroke.Sign == key)
            {
                Question = null;
                act();
                return;
            }
        }
    }

    private void Write(Entry entry, Stroke stroke, Action changed, Action quit)
    {
        switch (stroke)
        {
            case { Key: StrokeKey.Escape }:
            case { Key: StrokeKey.Enter } when entry.Text.Trim().Length == 0:
                Entry = null;
                break;
            case { Key: StrokeKey.Enter }:
                string? refusal = entered(entry.Text);
                Entry = refusal is null ? null : entry with { Refusal = refusal };
                if (refusal is null)
                {
                    changed();
                }
                break;
            case { Key: StrokeKey.Sign, Ctrl: true, Sign: 'c' or 'q' }:
                Entry = null;
                quit();
                break;
            default:
                Entry = entry.After(stroke) ?? entry;
                break;
        }
    }
}
