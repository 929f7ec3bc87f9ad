using GlowMix.Console.Tune.Pictures;

namespace GlowMix.Console.Tune.Views;

/// <summary>What a screen is told that is too small for anything.</summary>
internal sealed class TooSmallView(bool ascii) : LeafView(ascii)
{
    /// <inheritdoc/>
    protected override void Paint(Leaf leaf)
    {
        leaf.Fill(leaf.Whole, Look.Plain);
        string text =
            $"This window is {leaf.Columns} by {leaf.Rows}; tune needs {ScreenPlan.LeastColumns} columns and {ScreenPlan.LeastRows} rows. Enlarge it, and all comes back.";
        var lines = Wrapped.Lines(text, leaf.Columns);
        for (int i = 0; i < Math.Min(lines.Count, leaf.Rows); i++)
        {
            leaf.Put(0, i, lines[i], Look.Plain);
        }
    }
}
