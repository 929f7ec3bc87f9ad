using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The piece's name, its file, and what is not saved.</summary>
internal static class HeadPicture
{
    /// <summary>Paints it.</summary>
    public static void Paint(Leaf leaf, TuneModel model)
    {
        leaf.Fill(leaf.Whole, Look.Plain);
        string title = model.Bench.Document.Recipe?.Title ?? model.File.Name;
        string state = model.File.HasChanges(model) ? "not saved" : "saved";
        int turns = model.Bench.UndoCount;
        string right = turns switch
        {
            0 => $"{model.File.Name}, {state}",
            1 => $"{model.File.Name}, {state}, 1 turn",
            _ => $"{model.File.Name}, {state}, {turns} turns",
        };
        int room = leaf.Columns - Leaf.WidthOf(right) - 4;
        leaf.Put(1, 0, title, Look.Plain.Bold, Math.Max(0, room));
        leaf.PutRight(leaf.Columns - 1, 0, right, Look.Plain.Faint);
    }
}
