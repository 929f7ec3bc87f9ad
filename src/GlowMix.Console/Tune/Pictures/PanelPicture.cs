using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The open panel.</summary>
internal static class PanelPicture
{
    /// <summary>Paints it.</summary>
    public static void Paint(Leaf leaf, TuneModel model)
    {
        leaf.Fill(leaf.Whole, Look.Plain);
        for (int y = 0; y < leaf.Rows; y++)
        {
            leaf.Set(0, y, leaf.Ascii ? '|' : '▏', Look.Plain.Faint);
        }
        if (model.Panel == Panel.Keys)
        {
            Keys(leaf);
        }
    }

    private static void Keys(Leaf leaf)
    {
        const int WrittenColumns = 24;
        leaf.Put(2, 0, "Keys", Look.Plain.Bold);
        int y = 1;
        foreach (var line in KeyTable.All)
        {
            leaf.Put(2, y, line.Written, Look.Plain.Bold);
            foreach (
                string part in Wrapped.Lines(line.Meaning, Math.Max(10, leaf.Columns - WrittenColumns - 3))
            )
            {
                leaf.Put(2 + WrittenColumns, y++, part, Look.Plain);
            }
        }
    }
}
