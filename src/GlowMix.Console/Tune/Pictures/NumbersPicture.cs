using GlowMix.Console.Texts;
using GlowMix.Console.Tune.Model;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The recipe's few numbers, the one that is held, and what is wanted of the piece.</summary>
internal static class NumbersPicture
{
    private const int LabelColumns = 10;
    private const int MostTargets = 6;

    /// <summary>Paints them.</summary>
    /// <returns>The knob in each row, −1 for none: what a click means.</returns>
    public static int[] Paint(Leaf leaf, TuneModel model)
    {
        var knobAt = new int[leaf.Rows];
        Array.Fill(knobAt, -1);
        leaf.Fill(leaf.Whole, Look.Plain);
        if (model.Bench.Piece is null)
        {
            Problems(leaf, model);
            return knobAt;
        }
        var rows = Rows(model.Bench);
        // Two lines a target; where there is no room for them, one, and the numbers scroll.
        int count = Math.Min(MostTargets, model.Shown?.Targets.Count ?? 0);
        bool isBrief = rows.Count + (2 * count) + 1 > leaf.Rows;
        int room = leaf.Rows - (isBrief ? count : (2 * count) + 1);
        int held = Math.Max(0, rows.FindIndex(r => r.Knob == model.Bench.Cursor));
        int first = Math.Clamp(held - (room / 2), 0, Math.Max(0, rows.Count - room));
        int y = 0;
        for (int i = first; i < rows.Count && y < room; i++, y++)
        {
            if (rows[i].Knob < 0)
            {
                leaf.Put(1, y, rows[i].Heading, Look.Plain.Faint, leaf.Columns - 2);
                continue;
            }
            knobAt[y] = rows[i].Knob;
            Knob(leaf, y, model, rows[i].Knob);
        }
        if (first > 0)
        {
            leaf.PutRight(leaf.Columns - 1, 0, leaf.Ascii ? "^ more" : "▴ more", Look.Plain.Faint);
        }
        if (first + y < rows.Count)
        {
            leaf.PutRight(leaf.Columns - 1, y - 1, leaf.Ascii ? "v more" : "▾ more", Look.Plain.Faint);
        }
        Targets(leaf, isBrief ? leaf.Rows - count : y + 1, model, isBrief);
        return knobAt;
    }

    private static List<(int Knob, string Heading)> Rows(Bench bench)
    {
        var rows = new List<(int, string)>();
        string group = "";
        for (int i = 0; i < bench.Knobs.Length; i++)
        {
            string own = bench.Knobs[i].Group;
            // A clear layer's heading is what turns it into a loaded one.
            if (own != group && !bench.Knobs[i].IsClearLayer)
            {
                rows.Add((-1, own.Length == 0 ? "piece" : own));
            }
            group = own;
            rows.Add((i, ""));
        }
        return rows;
    }

    private static void Knob(Leaf leaf, int y, TuneModel model, int index)
    {
        var knob = model.Bench.Knobs[index];
        bool isHeld = index == model.Bench.Cursor;
        var look = isHeld ? Palette.Held : Look.Plain;
        if (isHeld)
        {
            leaf.Fill(new(0, y, leaf.Columns, 1), look);
            leaf.Set(0, y, leaf.Ascii ? '>' : '▸', look);
        }
        if (knob.IsClearLayer)
        {
            leaf.Put(1, y, knob.Group, isHeld ? look : look.Faint, LabelColumns);
        }
        else
        {
            leaf.Put(2, y, knob.Label, look, LabelColumns);
        }
        int x = 2 + LabelColumns;
        if (isHeld && model.Entry is { Prompt: "" } entry)
        {
            leaf.Fill(new(x, y, leaf.Columns - x - 1, 1), look.Underline);
            leaf.Put(x, y, Tail(entry.Text, leaf.Columns - x - 3) + "_", look.Underline);
            return;
        }
        string? then = model.Bench.AtStart(knob);
        var value = then is null ? look : look.Bold;
        string written = knob.IsClearLayer ? "no pigment" : knob.Written;
        x = leaf.Put(x, y, written, knob.IsTaken ? look.Faint : value, leaf.Columns - x - 1);
        if (then is not null)
        {
            string was = knob.IsNumber ? $"was {then}" : "changed";
            leaf.PutRight(leaf.Columns - 1, y, x + was.Length + 2 < leaf.Columns ? was : "*", look);
        }
        else if (knob.IsTaken && x + 7 < leaf.Columns)
        {
            leaf.PutRight(leaf.Columns - 1, y, "taken", look.Faint);
        }
    }

    private static void Targets(Leaf leaf, int y, TuneModel model, bool isBrief)
    {
        if (model.Shown is not { } shown)
        {
            return;
        }
        foreach (var (name, bounds, how, state) in TargetLines.Of(shown))
        {
            int line = isBrief ? y : y + 1;
            if (line >= leaf.Rows)
            {
                return;
            }
            char mark = state switch
            {
                TargetState.Met => leaf.Ascii ? '+' : '●',
                TargetState.Missed => leaf.Ascii ? '-' : '○',
                TargetState.TooClose => leaf.Ascii ? '?' : '◐',
                _ => ' ',
            };
            var look = state == TargetState.Met ? Look.Plain : Look.Plain.Bold;
            string told = model.IsFresh ? how : "…";
            leaf.Set(1, line, mark, Look.Plain);
            if (isBrief)
            {
                string all = $"{name}: {told}";
                bool fits = Leaf.WidthOf(all) <= leaf.Columns - 4;
                leaf.Put(3, line, fits ? all : $"{name}: {told.Split(',')[0]}", look, leaf.Columns - 4);
                y++;
                continue;
            }
            string wanted = $"{name} {bounds}";
            bool hasRoom = Leaf.WidthOf(wanted) <= leaf.Columns - 2;
            leaf.Put(1, y, hasRoom ? wanted : name, Look.Plain.Faint, leaf.Columns - 2);
            leaf.Put(3, line, hasRoom ? told : $"{told}; {bounds}", look, leaf.Columns - 4);
            y += 2;
        }
    }

    private static void Problems(Leaf leaf, TuneModel model)
    {
        int y = 1;
        string[] written = model.Bench.Document.Text.Split('\n');
        foreach (var problem in model.Bench.Problems)
        {
            string place = problem.Place is { } p ? $"line {p.Line}: " : "";
            foreach (string line in Wrapped.Lines(place + problem.Text, leaf.Columns - 2))
            {
                if (y >= leaf.Rows)
                {
                    return;
                }
                leaf.Put(1, y++, line, Look.Plain);
            }
            if (problem.Place is { Line: int at } && at > 0 && at <= written.Length && y < leaf.Rows)
            {
                leaf.Put(
                    3,
                    y++,
                    Letters.OneLine(written[at - 1].TrimEnd(), leaf.Ascii),
                    Look.Plain.Faint,
                    leaf.Columns - 4
                );
            }
            y++;
        }
    }

    private static string Tail(string text, int columns) =>
        text.Length > columns ? text[^Math.Max(0, columns)..] : text;
}
