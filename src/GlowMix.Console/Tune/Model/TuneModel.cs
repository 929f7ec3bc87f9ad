using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>
/// The text UI without a screen: what is shown, and what each key does to it. Lives on one thread; the desk answers there, too.
/// </summary>
internal sealed class TuneModel
{
    private readonly OutlookShelf outlooks = new();
    private readonly Inquiry inquiry = new();
    private readonly IDesk desk;
    private string notice = "";

    /// <param name="bench">The recipe.</param>
    /// <param name="file">Where it is kept.</param>
    /// <param name="desk">Who works figures out.</param>
    /// <param name="pages">Who works long pages out.</param>
    /// <param name="mapWork">Who fills maps.</param>
    public TuneModel(Bench bench, RecipeFile file, IDesk desk, IPages pages, IMapWork mapWork)
    {
        (Bench, File, this.desk) = (bench, file, desk);
        Pins = new(this);
        Pages = new(this, pages);
        Map = new(this, mapWork);
        Ask();
    }

    /// <summary>The recipe under the hand.</summary>
    public Bench Bench { get; }

    /// <summary>Where it is kept.</summary>
    public RecipeFile File { get; }

    /// <summary>States kept to come back to.</summary>
    public PinBoard Pins { get; }

    /// <summary>Panels of text.</summary>
    public PagePanel Pages { get; }

    /// <summary>Loading over depth.</summary>
    public MapPanel Map { get; }

    /// <summary>What stands beside the pictures.</summary>
    public Panel Panel { get; private set; }

    /// <summary>How far the panel's text is scrolled, rows.</summary>
    public int Scroll { get; set; }

    /// <summary>Whether the dark side is in view where only one is.</summary>
    public bool ShowsDark { get; private set; }

    /// <summary>What is being typed; null if nothing is.</summary>
    public Entry? Entry => inquiry.Entry;

    /// <summary>What must be decided first; null if nothing.</summary>
    public Question? Question
    {
        get => inquiry.Question;
        set => inquiry.Question = value;
    }

    /// <summary>Something must be decided or typed first; the mouse waits.</summary>
    public bool IsBusy => !inquiry.IsOver;

    /// <summary>The user wants to leave.</summary>
    public bool HasEnded { get; private set; }

    /// <summary>What is foretold of the recipe as it is; null until it is worked out.</summary>
    public Outlook? Now => outlooks.Find(Bench.Document);

    /// <summary>What is foretold of the recipe as it was opened.</summary>
    public Prediction? Start => outlooks.Find(Bench.Start)?.Prediction;

    /// <summary>The latest figures there are: those of <see cref="Now"/>, or, until they come, those shown before.</summary>
    public Prediction? Shown { get; private set; }

    /// <summary>Whether <see cref="Shown"/> is of the recipe as it is.</summary>
    public bool IsFresh => Now?.Prediction is not null;

    /// <summary>Likely figures of any state; null if not worked out.</summary>
    public Prediction? Of(RecipeDocument document) => outlooks.Find(document)?.Prediction;

    /// <summary>What a key does.</summary>
    public void Press(Stroke stroke)
    {
        notice = "";
        bool isDone =
            inquiry.Press(stroke, () => Changed(null), Quit)
            || (Panel != Panel.None && PanelKeys.Press(this, stroke));
        if (!isDone)
        {
            if (KeyTable.Find(stroke) is { } line)
            {
                line.Do(this, stroke);
            }
            else if (stroke.Key == StrokeKey.Sign)
            {
                notice = "That key does nothing here; ? lists those that do.";
            }
        }
    }

    /// <summary>An answer of the desk's.</summary>
    public void Take(Outlook outlook)
    {
        outlooks.Keep(outlook);
        Shown = Now?.Prediction ?? Shown;
    }

    /// <summary>Holds another knob.</summary>
    public void Hold(int index)
    {
        Bench.Hold(index);
        desk.LookAhead(Bench.Ahead());
    }

    /// <summary>Turns the held knob.</summary>
    public void Turn(StepSize size, bool up)
    {
        notice = "";
        Changed(Bench.Turn(size, up));
    }

    /// <summary>Begins to type a value for the held knob.</summary>
    public void Type(string begun)
    {
        if (Bench.Held is { WhyFixed.Length: > 0 } @fixed)
        {
            notice = @fixed.WhyFixed;
        }
        else if (Bench.Held is { } knob)
        {
            inquiry.Begin(new("", knob.IsNumber ? begun : ""), Bench.SetTyped);
        }
    }

    /// <summary>Sets the held knob to a value in words.</summary>
    /// <returns>Why not; null if it did.</returns>
    public string? Set(string value)
    {
        notice = "";
        string? refusal = Bench.SetTyped(value);
        if (refusal is null)
        {
            Changed(null);
        }
        return refusal;
    }

    /// <summary>Asks for the figures of the recipe as it is.</summary>
    public void AskAgain() => Ask();

    /// <summary>Puts the held knob back to where it stood at the start.</summary>
    public void PutBack() => Changed(Bench.PutBack());

    /// <summary>Undo, redo.</summary>
    public void GoBack(bool forth)
    {
        notice = "";
        if (forth ? Bench.Redo() : Bench.Undo())
        {
            Changed(null);
            return;
        }
        notice = forth ? "Nothing was undone." : "This is the start.";
    }

    /// <summary>The other side of the piece.</summary>
    public void Turnover() => ShowsDark = !ShowsDark;

    /// <summary>Opens a panel; the same again closes it.</summary>
    public void Open(Panel panel)
    {
        Panel = Panel == panel ? Panel.None : panel;
        Scroll = 0;
        notice = FootText.PanelHint(Panel);
        Changed(null);
    }

    /// <summary>Keeps the present state.</summary>
    public void PinThis() => notice = Pins.Add();

    /// <summary>Goes to the next pinned state.</summary>
    public void Flip()
    {
        if (Pins.Next() is not { } pin)
        {
            notice = "Nothing is pinned; p pins this state.";
            return;
        }
        Changed(Bench.Take(pin.Document, $"Flip to pin {pin.Name}"));
    }

    /// <summary>Goes to a state found elsewhere, as one turn.</summary>
    public void Go(RecipeDocument document, string what) => Changed(Bench.Take(document, what));

    /// <summary>Saves, or asks for the name to save under.</summary>
    public void Save(bool asOther)
    {
        if (asOther)
        {
            inquiry.Begin(new("Save as", File.Name), name => File.SaveAs(this, name));
            return;
        }
        File.Save(this);
    }

    /// <summary>Leaves; asks first if something is not saved.</summary>
    public void Quit()
    {
        if (!File.HasChanges(this))
        {
            End();
            return;
        }
        Question = new(
            "Not saved.",
            [
                (
                    's',
                    "save and quit",
                    () =>
                    {
                        File.Save(this);
                        HasEnded = !File.HasChanges(this);
                    }
                ),
                ('d', "drop the changes and quit", End),
            ]
        );
    }

    /// <summary>Says something at the foot until the next key.</summary>
    public void Say(string text) => notice = text;

    /// <summary>Goes on with another text of the file, as at the start.</summary>
    public void Reopen(RecipeDocument document)
    {
        outlooks.Clear();
        Bench.Reopen(document);
        Shown = null;
        Ask();
    }

    /// <summary>The sentence at the foot.</summary>
    public string Foot => FootText.Of(this, notice);

    private void Changed(string? refusal)
    {
        if (refusal is not null)
        {
            notice = refusal;
            return;
        }
        Shown = Now?.Prediction ?? Shown;
        if (Panel == Panel.Map)
        {
            Map.Look();
        }
        Ask();
    }

    private void Ask()
    {
        if (Bench.Piece is null)
        {
            return;
        }
        var beside = new[] { Bench.Before, Bench.Start }
            .OfType<RecipeDocument>()
            .Where(d => d.Recipe is not null && outlooks.Find(d) is null && d.Text != Bench.Document.Text)
            .DistinctBy(d => d.Text);
        if (Now is not { Completeness: 2 } || beside.Any())
        {
            desk.Ask(Bench.Document, beside);
        }
        desk.LookAhead(Bench.Ahead());
    }

    private void End()
    {
        File.Forget();
        HasEnded = true;
    }
}
