using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The sentence at the foot: what the last turn gave and took, or what is asked.</summary>
internal static class FootPicture
{
    private const string Hint = "? keys";

    /// <summary>Paints it.</summary>
    public static void Paint(Leaf leaf, TuneModel model)
    {
        leaf.Fill(leaf.Whole, Look.Plain);
        var look = model.IsBusy ? Look.Plain.Bold : Look.Plain;
        var lines = Wrapped.Lines(model.Foot, leaf.Columns - 2);
        for (int i = 0; i < Math.Min(lines.Count, leaf.Rows); i++)
        {
            bool isCut = i == leaf.Rows - 1 && lines.Count > leaf.Rows;
            leaf.Put(
                1,
                i,
                isCut ? lines[i][..Math.Max(0, Math.Min(lines[i].Length, leaf.Columns - 4))] + "…" : lines[i],
                look
            );
        }
        if (
            lines.Count < leaf.Rows
            || lines[^1].Length + Hint.Length + 4 < leaf.Columns && lines.Count == leaf.Rows
        )
        {
            leaf.PutRight(leaf.Columns - 1, leaf.Rows - 1, Hint, Look.Plain.Faint);
        }
    }
}
