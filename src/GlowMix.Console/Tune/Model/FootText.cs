using GlowMix.Documents;

namespace GlowMix.Console.Tune.Model;

/// <summary>What stands at the foot: a question, what is being typed, a notice, or what the last turn gave and took.</summary>
internal static class FootText
{
    /// <summary>How keys turn numbers, where there are keys.</summary>
    public const string UseOfArrows = " Arrows choose a number and turn it.";

    private const string Unturned = "As the file has it.";

    /// <summary>The text.</summary>
    /// <param name="model">What is shown.</param>
    /// <param name="notice">What was said since the last key; empty if nothing was.</param>
    public static string Of(TuneModel model, string notice)
    {
        if (model.Question is { } question)
        {
            return question.Line;
        }
        if (model.Entry is { } entry)
        {
            return entry.Refusal.Length > 0 ? entry.Refusal
                : entry.Prompt.Length > 0 ? $"{entry.Prompt}: {entry.Text}_   Enter, or Esc to leave it"
                : Hint(model.Bench.Held, entry.Text.Trim());
        }
        return notice.Length > 0 ? notice : Sentence(model);
    }

    /// <summary>What keys do in a panel; empty where they do what they always do.</summary>
    public static string PanelHint(Panel panel) =>
        panel switch
        {
            Panel.Map => "Arrows look at another point, Enter takes it, Esc leaves the map.",
            Panel.Batch =>
                "< and > for fewer or more pieces; up, down and Page keys scroll, Esc leaves the page.",
            Panel.Keys or Panel.Markings or Panel.Sources =>
                "Up, down and Page keys scroll, Esc leaves the page.",
            _ => "",
        };

    // Of names only those that what is typed can still become.
    private static string Hint(Knob? held, string typed) =>
        held is not { } knob ? ""
        : knob.IsNumber
            ? $"{knob.FullLabel}{(knob.Unit.Length > 0 ? ", " + knob.Unit : "")}: {knob.Allowed}; Enter sets it, Esc leaves it."
        : $"{knob.FullLabel}, the beginning of a name: {string.Join(", ", knob.Words.Where(w => w.StartsWith(typed, StringComparison.OrdinalIgnoreCase)))}";

    private static string Sentence(TuneModel model)
    {
        var bench = model.Bench;
        if (bench.Piece is null)
        {
            return "This recipe has errors; mend them in the file, and it comes to life here.";
        }
        if (model.Now is { Prediction: null } failed)
        {
            var error = failed.Problems.FirstOrDefault(p => p.Severity == Severity.Error);
            return $"This cannot be predicted: {error?.Text ?? "no reason is known"}";
        }
        if (bench.Before is null && PanelHint(model.Panel) is { Length: > 0 } hint)
        {
            return hint;
        }
        if (bench.Before is null)
        {
            return Unturned + UseOfArrows;
        }
        var balance = bench.Document.Recipe?.Balance;
        return model.Now?.Prediction is { } now && model.Of(bench.Before) is { } before
            ? TurnSentence.Of(bench.Present.What, before, now, balance?.WhiteCctK, balance?.GlowAtMinutes)
            : $"{bench.Present.What} …";
    }
}
