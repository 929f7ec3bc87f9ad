namespace GlowMix.Documents.Tidying;

/// <summary>Whether two documents say the same: the order of keys and the writing of numbers do not count.</summary>
internal static class SameMeaning
{
    public static bool Of(DocumentNode? one, DocumentNode? other) =>
        (one, other) switch
        {
            (MappingNode a, MappingNode b) => a.Entries.Length == b.Entries.Length
                && a.Entries.All(e => b.Find(e.Key.Value) is { } same && Of(e.Value, same.Value)),
            (ListNode a, ListNode b) => a.Items.Length == b.Items.Length
                && a.Items.Zip(b.Items).All(pair => Of(pair.First, pair.Second)),
            (ScalarNode a, ScalarNode b) => a.IsPlain == b.IsPlain
                && (
                    a.Value == b.Value
                    || (
                        a.IsPlain
                        && NumberText.TryRead(a.Value, out double x)
                        && NumberText.TryRead(b.Value, out double y)
                        && x == y
                    )
                ),
            _ => false,
        };
}
