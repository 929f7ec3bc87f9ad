using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Pieces;

namespace GlowMix.Choosing.Compare;

/// <summary>Materials of one name whose files say different things: of two folders, or of two times.</summary>
internal static class MaterialDifferences
{
    private const int LongestText = 60;
    private static readonly string[] wordsOnly = ["title", "cautions", "source"];

    /// <summary>The differences, one an entry; none for what was only worded otherwise.</summary>
    public static IEnumerable<RecipeDifference> Of(Piece before, Piece after)
    {
        if (CalibrationDifference(before, after) is { } readings)
        {
            yield return readings;
        }
        var others = MaterialsOf(after).ToList();
        foreach (var material in MaterialsOf(before))
        {
            var other = others.Find(m => m.Name == material.Name && m.GetType() == material.GetType());
            if (material.Origin?.Text is not { } was || other?.Origin?.Text is not { } now || was == now)
            {
                continue;
            }
            var (first, second) = (EntriesOf(was, material.Name), EntriesOf(now, material.Name));
            foreach (string key in first.Keys.Union(second.Keys))
            {
                string? a = first.GetValueOrDefault(key);
                string? b = second.GetValueOrDefault(key);
                if (a != b)
                {
                    yield return new($"file:{material.Name}.{key}", Shortened(a), Shortened(b), false);
                }
            }
        }
    }

    // The recipe names the same calibration, and what that file holds is another.
    private static RecipeDifference? CalibrationDifference(Piece before, Piece after)
    {
        if (
            before.Calibration is not { } was
            || after.Calibration is not { } now
            || before.Recipe.CalibrationPath != after.Recipe.CalibrationPath
            || MaterialsOf(before)
                .Zip(MaterialsOf(after))
                .All(m => m.First.Origin?.Text != m.Second.Origin?.Text || SameMaterial.Is(m.First, m.Second))
        )
        {
            return null;
        }
        return new(
            "calibration",
            was.InWords,
            was.InWords == now.InWords ? $"{now.InWords}, with other numbers" : now.InWords,
            false
        );
    }

    private static Dictionary<string, string> EntriesOf(string text, string name)
    {
        var entries = new Dictionary<string, string>();
        foreach (var entry in Document.Read(text, name).Root!.Entries)
        {
            if (!wordsOnly.Contains(entry.Key.Value))
            {
                entries[entry.Key.Value] = InOneLine(entry.Value);
            }
        }
        return entries;
    }

    private static string InOneLine(DocumentNode node) =>
        node switch
        {
            ScalarNode scalar => scalar.Value,
            ListNode list => string.Join("; ", list.Items.Select(InOneLine)),
            MappingNode mapping => string.Join(
                ", ",
                mapping
                    .Entries.Where(e => !wordsOnly.Contains(e.Key.Value))
                    .Select(e =>
                        e.Key.Value == "value" ? InOneLine(e.Value)
                        : e.Value is ScalarNode ? $"{e.Key.Value} {InOneLine(e.Value)}"
                        : InOneLine(e.Value)
                    )
            ),
            _ => "",
        };

    private static string? Shortened(string? text) => text?.Length > LongestText ? "another table" : text;

    private static IEnumerable<Material> MaterialsOf(Piece piece) =>
        new Material?[] { piece.Resin, piece.Led, piece.Board }
            .Concat(piece.Layers.Select(l => l.Pigment))
            .Concat(piece.Steps.Select(s => s.Lamp))
            .OfType<Material>()
            .DistinctBy(m => (m.Name, m.GetType()));
}
