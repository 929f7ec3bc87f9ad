using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>The file behind the screen: saving, what others do to it, and what is left behind if all ends badly.</summary>
internal sealed class RecipeFile
{
    private readonly IRecipeStore store;
    private string onDisk;
    private string autosaved = "";

    /// <param name="store">Where it is kept.</param>
    /// <param name="text">As it was read.</param>
    public RecipeFile(IRecipeStore store, string text) => (this.store, onDisk) = (store, text);

    /// <summary>The file as the user named it.</summary>
    public string Name => store.Name;

    /// <summary>Whether the screen holds what the file does not.</summary>
    public bool HasChanges(TuneModel model) => model.Bench.Document.Text != onDisk;

    /// <summary>Saves; asks first if somebody else changed the file.</summary>
    public void Save(TuneModel model)
    {
        if (!HasChanges(model))
        {
            model.Say("Nothing to save: the file holds what you see.");
            return;
        }
        var there = store.Read();
        if (there.Problem is null && there.Text != onDisk)
        {
            model.Question = new(
                $"{Name} was changed by someone else since it was opened.",
                [
                    ('w', "write over it", () => Write(model)),
                    ('o', "open theirs and lose these turns", () => Reopen(model, there.Text)),
                ]
            );
            return;
        }
        Write(model);
    }

    /// <summary>Saves under another name, and goes on with that file.</summary>
    /// <returns>Why not; null if it did, or asks.</returns>
    public string? SaveAs(TuneModel model, string name)
    {
        name = name.Trim();
        if (name == Name)
        {
            Save(model);
            return null;
        }
        if (store.Exists(name))
        {
            model.Question = new(
                $"{name} is there already.",
                [('w', "write over it", () => model.Say(WriteAs(model, name) ?? $"Saved as {name}."))]
            );
            return null;
        }
        string? problem = WriteAs(model, name);
        if (problem is null)
        {
            model.Say($"Saved as {name}.");
        }
        return problem;
    }

    /// <summary>Looks whether somebody else changed the file, and asks what to do.</summary>
    /// <returns>Whether there is something new to show.</returns>
    public bool LookAtDisk(TuneModel model)
    {
        if (model.IsBusy)
        {
            return false;
        }
        var there = store.Read();
        if (there.Problem is not null || there.Text == onDisk)
        {
            return false;
        }
        if (!HasChanges(model))
        {
            Reopen(model, there.Text);
            model.Say($"{Name} was changed on disk; this is the new text.");
            return true;
        }
        // Asked once for each text: after an answer the file's new text is the one that is known.
        onDisk = there.Text;
        if (HasChanges(model))
        {
            model.Question = new(
                $"{Name} was changed by someone else.",
                [
                    ('k', "keep these turns", () => model.Say("Kept; saving will write over theirs.")),
                    ('o', "open theirs and lose these turns", () => Reopen(model, there.Text)),
                ]
            );
        }
        return true;
    }

    /// <summary>Asks about what an earlier run left behind.</summary>
    public void OfferAutosave(TuneModel model)
    {
        if (store.ReadAutosave() is not { } left || left == onDisk)
        {
            DropAutosave();
            return;
        }
        autosaved = left;
        model.Question = new(
            "An earlier run ended before its turns were saved.",
            [
                (
                    't',
                    "take them up again",
                    () => model.Go(RecipeDocument.Read(left, Name), "Turns of an earlier run taken up")
                ),
                ('d', "drop them", DropAutosave),
            ]
        );
    }

    /// <summary>Leaves what is not saved beside the file, if it is not there yet; not after the user has left and dropped it.</summary>
    public void Autosave(TuneModel model)
    {
        string text = model.Bench.Document.Text;
        if (!model.HasEnded && HasChanges(model) && text != autosaved)
        {
            store.WriteAutosave(text);
            autosaved = text;
        }
    }

    /// <summary>What is not saved is meant to be forgotten.</summary>
    public void Forget() => DropAutosave();

    private void Write(TuneModel model)
    {
        string text = model.Bench.Document.Text;
        if (store.Write(text) is { } problem)
        {
            model.Say(problem.ToString());
            return;
        }
        onDisk = text;
        DropAutosave();
        model.Bench.Close();
        model.Say($"Saved {Name}.");
    }

    private string? WriteAs(TuneModel model, string name)
    {
        string text = model.Bench.Document.Text;
        if (store.WriteAs(name, text) is { } problem)
        {
            return problem.ToString();
        }
        onDisk = text;
        return null;
    }

    // What is not beside the file any more is written again at the next turn, also where its text is the same.
    private void DropAutosave()
    {
        store.DropAutosave();
        autosaved = "";
    }

    private void Reopen(TuneModel model, string text)
    {
        onDisk = text;
        DropAutosave();
        model.Reopen(RecipeDocument.Read(text, Name));
    }
}
