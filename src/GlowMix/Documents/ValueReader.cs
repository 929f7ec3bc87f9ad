namespace GlowMix.Documents;

/// <summary>Interprets one value, or adds the problem and returns null.</summary>
internal static class ValueReader
{
    public static double? Number(DocumentNode node, string key, NumberRange allowed, ProblemList problems)
    {
        if (Scalar(node, key, "a number", problems) is not { } scalar)
        {
            return null;
        }
        if (!scalar.IsPlain && NumberText.TryRead(scalar.Value, out _))
        {
            string hint = $"write the number without quotes: {scalar.Value}";
            problems.Error(node.Place, ProblemTexts.NotANumber(key, $"\"{scalar.Value}\"", hint, allowed));
            return null;
        }
        if (!NumberText.TryRead(scalar.Value, out double number))
        {
            string? hint = NumberText.Hint(scalar.Value);
            problems.Error(node.Place, ProblemTexts.NotANumber(key, scalar.Value, hint, allowed));
            return null;
        }
        if (!allowed.Contains(number))
        {
            problems.Error(node.Place, ProblemTexts.OutOfRange(key, number, allowed));
            return null;
        }
        return number;
    }

    public static int? WholeNumber(DocumentNode node, string key, int least, int most, ProblemList problems)
    {
        var allowed = NumberRange.Between(least, most);
        if (Number(node, key, allowed, problems) is not { } number)
        {
            return null;
        }
        if (number != Math.Floor(number))
        {
            problems.Error(node.Place, ProblemTexts.NotWhole(key, number, allowed));
            return null;
        }
        return (int)number;
    }

    public static string? Text(DocumentNode node, string key, ProblemList problems)
    {
        if (Scalar(node, key, "a text", problems) is not { } scalar)
        {
            return null;
        }
        string text = scalar.Value.Trim();
        if (text.Length == 0)
        {
            problems.Error(node.Place, ProblemTexts.NoValue(key));
            return null;
        }
        // Escapes in double quotes can write any character, also those a terminal obeys.
        if (text.Any(c => char.IsControl(c) && c != '\n'))
        {
            problems.Error(node.Place, ProblemTexts.NotPrintable(key));
            return null;
        }
        return text;
    }

    public static string? OneOf(
        DocumentNode node,
        string key,
        IReadOnlyCollection<string> words,
        ProblemList problems
    )
    {
        if (Text(node, key, problems) is not { } word)
        {
            return null;
        }
        if (!words.Contains(word))
        {
            problems.Error(node.Place, ProblemTexts.NotOneOf(key, word, words));
            return null;
        }
        return word;
    }

    public static MappingReader? Mapping(DocumentNode node, string key, string path, ProblemList problems)
    {
        if (node is MappingNode mapping)
        {
            return new(mapping, problems, path);
        }
        Refuse(node, key, "keys with values", problems);
        return null;
    }

    public static ListReader? List(
        DocumentNode node,
        string key,
        string path,
        int least,
        int most,
        ProblemList problems
    )
    {
        if (node is not ListNode list)
        {
            Refuse(node, key, "a list, one '- ' a line", problems);
            return null;
        }
        var allowed = most == int.MaxValue ? NumberRange.AtLeast(least) : NumberRange.Between(least, most);
        if (!allowed.Contains(list.Items.Length))
        {
            problems.Error(node.Place, ProblemTexts.CountOutOfRange(key, list.Items.Length, allowed));
            return null;
        }
        return new(list, problems, key, path);
    }

    private static ScalarNode? Scalar(DocumentNode node, string key, string needed, ProblemList problems)
    {
        if (node is ScalarNode { IsEmpty: false } scalar)
        {
            return scalar;
        }
        Refuse(node, key, needed, problems);
        return null;
    }

    private static void Refuse(DocumentNode node, string key, string needed, ProblemList problems) =>
        problems.Error(
            node.Place,
            node is ScalarNode { IsEmpty: true }
                ? ProblemTexts.NoValue(key)
                : ProblemTexts.WrongShape(key, node.What, needed)
        );
}
