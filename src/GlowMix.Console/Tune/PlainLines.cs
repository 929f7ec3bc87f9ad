using System.Globalization;
using GlowMix.Console.Texts;
using GlowMix.Console.Tune.Model;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune;

/// <summary>The text UI in lines: one command in, some sentences out. For screen readers, and for pipes.</summary>
/// <param name="model">What is shown.</param>
/// <param name="sheet">Where it is told.</param>
/// <param name="banded">Works bands out while one waits.</param>
internal sealed class PlainLines(TuneModel model, Sheet sheet, Func<RecipeDocument, Outlook> banded)
{
    private static readonly (string Words, string Meaning)[] commands =
    [
        ("NUMBER VALUE", "turns a number, by its name or its place in the list: 'loading 22', '3 2.5'"),
        ("NUMBER more, NUMBER less", "one step: 'depth more'"),
        ("numbers", "what can be turned"),
        ("figures", "the piece, lit and dark, with low and high; takes some seconds"),
        ("targets", "what is wanted of it"),
        ("undo, redo", "one turn back or forth"),
        ("markings", "the glow beside criteria"),
        ("batch", "what to weigh"),
        ("origins", "where each number comes from"),
        ("save, save NAME", "saves; under another name"),
        ("quit", "ends; 'quit anyway' with turns that are not saved"),
        ("help", "these lines"),
    ];

    /// <summary>Does what a line says.</summary>
    /// <returns>False for the end.</returns>
    public bool Do(string line)
    {
        string[] words = line.Split(
            ' ',
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
        );
        switch (words)
        {
            case []:
                break;
            case ["quit"] when model.File.HasChanges(model):
                sheet.Paragraph("There are turns that are not saved. Write 'save', or 'quit anyway'.");
                break;
            case ["quit" or "exit", ..]:
                model.File.Forget();
                return false;
            case ["help" or "?"]:
                foreach (var (what, meaning) in commands)
                {
                    sheet.Paragraph($"{what}: {meaning}", hanging: 2);
                }
                break;
            case ["numbers"]:
                Numbers();
                break;
            case ["figures"]:
                if (model.Now is { Prediction: not null, Completeness: < 2 })
                {
                    model.Take(banded(model.Bench.Document));
                }
                Figures();
                break;
            case ["targets"]:
                Targets();
                break;
            case ["undo" or "redo"]:
                model.GoBack(words[0] == "redo");
                sheet.Paragraph(Foot);
                break;
            case ["markings" or "batch" or "origins"]:
                Page(words[0]);
                break;
            case ["save", .. var name]:
                sheet.Paragraph(Save(string.Join(' ', name)));
                break;
            default:
                Turn(words);
                break;
        }
        return true;
    }

    /// <summary>What is told at the beginning.</summary>
    public void Begin()
    {
        sheet.Paragraph(
            $"{model.Bench.Document.Recipe?.Title ?? model.File.Name}. Write 'help' for what can be said."
        );
        if (model.Bench.Piece is null)
        {
            foreach (var problem in model.Bench.Problems)
            {
                sheet.Paragraph(problem.ToString());
            }
            return;
        }
        Numbers();
        Figures();
    }

    private void Numbers()
    {
        for (int i = 0; i < model.Bench.Knobs.Length; i++)
        {
            var knob = model.Bench.Knobs[i];
            string was =
                model.Bench.AtStart(knob) is { } then ? $", was {then}"
                : knob.IsTaken ? ", as taken"
                : "";
            sheet.Paragraph(
                string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {knob.FullLabel} {knob.Written}{was}")
            );
        }
    }

    private string Foot => model.Foot.Replace(FootText.UseOfArrows, "", StringComparison.Ordinal);

    private void Figures()
    {
        if (model.Now?.Prediction is not { } now)
        {
            sheet.Paragraph(Foot);
            return;
        }
        bool hasBands = model.Now is { HasBands: true };
        sheet.Paragraph($"Lit: {LitAnswers.Headline(now)}.");
        foreach (var answer in LitAnswers.Of(now, model.Start))
        {
            Line(answer);
        }
        sheet.Paragraph($"Dark: {DarkAnswers.Headline(now, hasBands)}.");
        foreach (
            var answer in DarkAnswers.Of(
                now,
                model.Start,
                hasBands,
                model.Bench.Document.Recipe?.Balance.GlowAtMinutes
            )
        )
        {
            Line(answer);
        }
    }

    private void Line(Answer answer)
    {
        // Before low and high are known a line holds the likely figure alone, and their heads say nothing.
        string[] words = answer.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words is ["low", ..] && model.Now is not { HasBands: true })
        {
            return;
        }
        string text = string.Join(' ', words.Where(w => w != "…"));
        sheet.Paragraph(
            $"{answer.Label}: {text}{(answer.Change.Length > 0 ? $", {answer.Change} since the start" : "")}"
        );
    }

    private void Targets()
    {
        if (model.Now?.Prediction is not { Targets.Count: > 0 } now)
        {
            sheet.Paragraph("The recipe names no targets.");
            return;
        }
        foreach (var (name, bounds, how, _) in TargetLines.Of(now))
        {
            sheet.Paragraph($"{name} {bounds}: {how}");
        }
    }

    private void Page(string name)
    {
        model.Open(
            name switch
            {
                "markings" => Panel.Markings,
                "batch" => Panel.Batch,
                _ => Panel.Sources,
            }
        );
        // Asked for once, and there when asked for again.
        _ = model.Pages.Page;
        new PageText(sheet).Print(model.Pages.Page);
        model.Open(Panel.None);
    }

    private string Save(string name)
    {
        if (name.Length == 0)
        {
            model.File.Save(model);
        }
        else if (model.File.SaveAs(model, name) is { } problem)
        {
            return problem;
        }
        if (model.Question is { } question)
        {
            model.Question = null;
            return $"{question.Text} Save under another name.";
        }
        return Foot;
    }

    private void Turn(string[] words)
    {
        string value = words[^1];
        int knob = Find(string.Join(' ', words[..^1]));
        if (knob < 0)
        {
            string name = string.Join(' ', words[..^1]);
            string[] several =
            [
                .. model
                    .Bench.Knobs.Where(k => string.Equals(k.Label, name, StringComparison.OrdinalIgnoreCase))
                    .Select(k => k.FullLabel),
            ];
            sheet.Paragraph(
                several.Length > 1
                    ? $"Several are called '{name}': {string.Join(", ", several)}; say which, or its place in the list."
                    : $"'{string.Join(' ', words)}' is nothing that can be done here; write 'help' or 'numbers'."
            );
            return;
        }
        model.Hold(knob);
        if (value is "more" or "less")
        {
            model.Turn(StepSize.Usual, value == "more");
        }
        else if (model.Set(value) is { } refusal)
        {
            sheet.Paragraph(refusal);
            return;
        }
        sheet.Paragraph(Foot);
    }

    // By place, by the whole name, by the last word where only one has it.
    private int Find(string name)
    {
        var knobs = model.Bench.Knobs;
        if (int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int place))
        {
            return place >= 1 && place <= knobs.Length ? place - 1 : -1;
        }
        int[] found =
        [
            .. Enumerable
                .Range(0, knobs.Length)
                .Where(i => Same(knobs[i].FullLabel) || Same(knobs[i].Label) || Same(knobs[i].KeyPath)),
        ];
        int whole = Array.Find(found, i => Same(knobs[i].FullLabel));
        return found.Length == 1 ? found[0]
            : found.Length > 1 && Same(knobs[whole].FullLabel) ? whole
            : -1;

        bool Same(string label) => string.Equals(label, name, StringComparison.OrdinalIgnoreCase);
    }
}
