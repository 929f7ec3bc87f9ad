namespace GlowMix.Documents;

/// <summary>Reads the items of one list, counted from 0; a wrong item is null and a problem in the list of problems.</summary>
/// <param name="node">The list.</param>
/// <param name="problems">Where problems go.</param>
/// <param name="key">The list's key, for messages about its items.</param>
/// <param name="where">The list's key path for messages, such as 'charge.steps'.</param>
public sealed class ListReader(ListNode node, ProblemList problems, string key, string where)
{
    /// <summary>The list.</summary>
    public ListNode Node { get; } = node;

    /// <summary>Number of items.</summary>
    public int Count => Node.Items.Length;

    /// <summary>Where problems go.</summary>
    public ProblemList Problems { get; } = problems;

    /// <summary>An item as a number.</summary>
    public double? Number(int index, NumberRange allowed) =>
        ValueReader.Number(Node.Items[index], key, allowed, Problems);

    /// <summary>An item as a text.</summary>
    public string? Text(int index) => ValueReader.Text(Node.Items[index], key, Problems);

    /// <summary>An item as a mapping, called by its number from 1 or by a name of the caller's.</summary>
    public MappingReader? Mapping(int index, string? name = null) =>
        ValueReader.Mapping(
            Node.Items[index],
            key,
            FormattableString.Invariant($"{where}.{name ?? $"{index + 1}"}"),
            Problems
        );

    /// <summary>An item as a list of its own, such as a pair of numbers.</summary>
    public ListReader? List(int index, int least = 1, int most = int.MaxValue) =>
        ValueReader.List(Node.Items[index], key, where, least, most, Problems);
}
