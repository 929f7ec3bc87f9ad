using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>Reads the section 'balance'.</summary>
internal static class BalanceReader
{
    private const int MostChoices = 10;
    private const int MostValues = 30;

    public static RecipeBalance Read(MappingReader parent)
    {
        var section = RecipeSection.Optional(parent, "balance");
        var balance = new RecipeBalance
        {
            WhiteCctK = section.Number("white_cct_k"),
            GlowAtMinutes = section.Minutes("glow_at_minutes"),
            Choices = Choices(section.Reader.OptionalList("choices", 1, MostChoices), parent.Node),
        };
        section.Finish();
        return balance;
    }

    private static ImmutableArray<RecipeChoice> Choices(ListReader? list, MappingNode root)
    {
        if (list is null)
        {
            return [];
        }
        var choices = ImmutableArray.CreateBuilder<RecipeChoice>(list.Count);
        for (int i = 0; i < list.Count; i++)
        {
            if (list.Mapping(i) is not { } reader)
            {
                continue;
            }
            var choice = Choice(new RecipeSection(reader, "balance.choices.*"), root);
            if (choice.KeyPath.Length > 0 && choices.Any(c => c.KeyPath == choice.KeyPath))
            {
                reader.Error("key", RecipeTexts.ListedTwice("choices", choice.KeyPath));
            }
            choices.Add(choice);
        }
        return choices.ToImmutable();
    }

    private static RecipeChoice Choice(RecipeSection section, MappingNode root)
    {
        var reader = section.Reader;
        var (path, key) = Key(section, root);
        var ends = key?.Range ?? NumberRange.Any;
        double? from = reader.OptionalNumber("from", ends);
        double? to = reader.OptionalNumber("to", ends);
        var values = reader.OptionalList("any_of", 1, MostValues);
        var anyOf = values is null ? [] : AnyOf(values, key);
        if (key is not null)
        {
            CheckOffer(reader, path, key, from, to);
        }
        section.Finish();
        return new()
        {
            KeyPath = path,
            From = from,
            To = to,
            AnyOf = anyOf,
        };
    }

    private static (string Path, RecipeKey? Key) Key(RecipeSection section, MappingNode root)
    {
        string written = section.NeededText("key");
        if (written.Length == 0)
        {
            return ("", null);
        }
        var (path, problem) = KeyPaths.Resolve(root, written);
        if (path is null)
        {
            section.Reader.Error("key", problem!);
            return ("", null);
        }
        var key = RecipeKeys.Find(KeyPaths.PatternOf(path))!;
        if (!key.IsChoosable)
        {
            section.Reader.Error("key", RecipeTexts.NotChoosable(written));
            return ("", null);
        }
        // A layer without pigment stays clear, and an LED from a label has no other of its kind on the shelf.
        string needed = key.Section switch
        {
            "led" when key.Kind == RecipeKeyKind.Material => "led.material",
            "layers.*" when key.Name != "depth_mm" => path[..path.LastIndexOf('.')] + ".pigment",
            _ => "",
        };
        if (needed.Length > 0 && KeyPaths.Find(root, needed) is null)
        {
            section.Reader.Error("key", RecipeTexts.ChoiceIsNotWritten(path, needed));
        }
        return (path, key);
    }

    private static void CheckOffer(MappingReader reader, string path, RecipeKey key, double? from, double? to)
    {
        bool hasEnd = reader.Has("from") || reader.Has("to");
        if (!key.IsNumber && hasEnd)
        {
            string end = reader.Has("from") ? "from" : "to";
            reader.Error(end, RecipeTexts.NoRangeOfWords(end, path));
        }
        else if (reader.Has("any_of"))
        {
            _ = reader.NotBoth("any_of", "from") || reader.NotBoth("any_of", "to");
        }
        else if (!reader.Has("from") || !reader.Has("to"))
        {
            reader.Error("key", RecipeTexts.ChoiceOffersNothing(path, key.IsNumber));
        }
        else if (from >= to)
        {
            reader.Error("to", RecipeTexts.RangeEnds(from.Value, to!.Value));
        }
    }

    private static ImmutableArray<string> AnyOf(ListReader list, RecipeKey? key)
    {
        var values = ImmutableArray.CreateBuilder<string>(list.Count);
        for (int i = 0; i < list.Count; i++)
        {
            string? value = key is { IsNumber: true }
                ? list.Number(i, key.Range) is { } number
                    ? NumberText.Write(number)
                    : null
                : list.Text(i);
            if (value is null)
            {
                continue;
            }
            var place = list.Node.Items[i].Place;
            if (key is { Kind: RecipeKeyKind.Material } && !RecipeSection.IsMaterial(value))
            {
                list.Problems.Error(place, RecipeTexts.NotAMaterial("any_of", value));
            }
            else if (values.Contains(value))
            {
                list.Problems.Error(place, RecipeTexts.ListedTwice("any_of", value));
            }
            values.Add(value);
        }
        return values.ToImmutable();
    }
}
