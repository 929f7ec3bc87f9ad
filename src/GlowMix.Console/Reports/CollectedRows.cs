using GlowMix.Console.Texts;

namespace GlowMix.Console.Reports;

/// <summary>Takes the rows that are printed elsewhere, to set them on a page.</summary>
internal sealed class CollectedRows : IRowSheet
{
    private readonly List<(string Label, string Text)> rows = [];

    /// <summary>In the order in which they came.</summary>
    public IReadOnlyList<(string Label, string Text)> All => rows;

    /// <inheritdoc/>
    public void Row(string label, string text) => rows.Add((label, text));
}
