using System.Text;
using GlowMix.Documents;

namespace GlowMix.Tests.Documents.Tidying;

/// <summary>Writes a document as a careless hand might: any order, indentation, brackets, numbers; remarks everywhere.</summary>
internal sealed class UntidyText(Random chance)
{
    private readonly StringBuilder text = new();

    public static string Of(MappingNode root, int seed)
    {
        var untidy = new UntidyText(new Random(seed));
        untidy.Mapping(root, 0, isRoot: true);
        return untidy.text.ToString();
    }

    private void Mapping(MappingNode mapping, int indent, bool isRoot = false, bool isItem = false)
    {
        var entries = mapping.Entries.ToArray();
        // The first key tells the kind of a file.
        chance.Shuffle(isRoot ? entries.AsSpan(1) : entries.AsSpan());
        for (int i = 0; i < entries.Length; i++)
        {
            var (key, value) = entries[i];
            // An item's first key stands behind its dash.
            if (!isItem || i > 0)
            {
                Above(key.Value, indent, canBeSetOff: i > 0);
                text.Append(' ', indent);
            }
            text.Append(key.Value).Append(' ', Rarely(3) ? 1 : 0).Append(':');
            Value(key.Value, value, indent);
        }
    }

    private void Value(string key, DocumentNode value, int indent)
    {
        if (value is ScalarNode scalar)
        {
            string written = Written(scalar);
            text.Append(written.Length > 0 ? " " : "")
                .Append(' ', Rarely(3) ? chance.Next(9) : 0)
                .Append(written);
            Behind(key);
            return;
        }
        if (IsLeaf(value) && Rarely(3))
        {
            text.Append(' ').Append(Flow(value));
            Behind(key);
            return;
        }
        Behind(key);
        switch (value)
        {
            case MappingNode mapping:
                Mapping(mapping, indent + 1 + chance.Next(5));
                break;
            case ListNode list:
                int dash = indent + chance.Next(4);
                foreach (var item in list.Items)
                {
                    Above("item", dash, canBeSetOff: false);
                    int blanks = 1 + chance.Next(3);
                    text.Append(' ', dash).Append('-').Append(' ', blanks);
                    if (item is MappingNode mapping)
                    {
                        Mapping(mapping, dash + 1 + blanks, isItem: true);
                    }
                    else
                    {
                        text.Append(Written((ScalarNode)item)).Append('\n');
                    }
                }
                break;
        }
    }

    private void Above(string key, int indent, bool canBeSetOff)
    {
        if (canBeSetOff && Rarely(5))
        {
            text.Append('\n', 1 + chance.Next(3));
        }
        if (Rarely(4))
        {
            text.Append(' ', indent).Append("# above ").Append(key).Append('\n');
        }
    }

    private void Behind(string key) =>
        text.Append(Rarely(3) ? new string(' ', 1 + chance.Next(12)) + $"# behind {key}" : "")
            .Append(' ', Rarely(6) ? 2 : 0)
            .Append('\n');

    private string Flow(DocumentNode node) =>
        node switch
        {
            MappingNode mapping =>
                $"{{{string.Join(", ", mapping.Entries.Select(e => $"{e.Key.Value}: {Flow(e.Value)}"))}}}",
            ListNode list => $"[{string.Join(", ", list.Items.Select(Flow))}]",
            _ => Written((ScalarNode)node),
        };

    // Short ones only: a text with signs of YAML's own in it cannot stand in brackets.
    private static bool IsLeaf(DocumentNode node) =>
        node switch
        {
            MappingNode mapping => mapping.Entries.Length > 0 && mapping.Entries.All(e => IsLeaf(e.Value)),
            ListNode list => list.Items.Length > 0 && list.Items.All(IsLeaf),
            ScalarNode scalar => scalar.Value.Length > 0
                && scalar.Value.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '_'),
            _ => false,
        };

    private string Written(ScalarNode scalar)
    {
        string value = scalar.Value;
        if (
            !scalar.IsPlain
            || value.Contains(": ", StringComparison.Ordinal)
            || value.Contains(" #", StringComparison.Ordinal)
        )
        {
            return $"\"{value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
        }
        if (!NumberText.TryRead(value, out double number) || Rarely(2))
        {
            return value;
        }
        string sign = number < 0 ? "-" : "";
        string digits = value.TrimStart('-');
        return chance.Next(4) switch
        {
            0 when sign.Length == 0 => "+" + digits,
            1 when !digits.Contains('e', StringComparison.Ordinal) => $"{sign}{digits}E+0",
            2 => $"{sign}00{digits}",
            _ => digits.StartsWith("0.", StringComparison.Ordinal) ? sign + digits[1..] : value,
        };
    }

    private bool Rarely(int oneIn) => chance.Next(oneIn) == 0;
}
