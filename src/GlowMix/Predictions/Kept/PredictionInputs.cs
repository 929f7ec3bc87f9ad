using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Predictions.Kept;

/// <summary>Everything outside the program that a prediction was worked out from.</summary>
internal static class PredictionInputs
{
    private const string Like = "like";

    /// <summary>The recipe first, then the materials in the order in which light meets them.</summary>
    /// <param name="document">The recipe.</param>
    /// <param name="piece">The piece made from it.</param>
    /// <param name="shelf">Where its materials were looked up.</param>
    /// <param name="files">Where paths in the recipe lead; null if nowhere.</param>
    public static IReadOnlyList<PredictionInput> Of(
        RecipeDocument document,
        Piece piece,
        Shelf shelf,
        IMaterialSource? files
    )
    {
        var inputs = new List<PredictionInput>
        {
            new("recipe", HashOf(new(document.Name, document.Text), shelf: null)),
        };
        var recipe = piece.Recipe;
        if (recipe.CalibrationPath is { } calibration && files is not null)
        {
            Add("calibration", HashOf(files.Open(calibration), shelf: null));
        }
        AddMaterial(MaterialKind.Led, piece.Led);
        if (recipe.Led.Source is LedBySpectrum measured && files is not null)
        {
            Add($"spectrum {measured.SpectrumPath}", LinesHashOf(files.Open(measured.SpectrumPath)));
        }
        AddMaterial(MaterialKind.Board, piece.Board);
        AddMaterial(MaterialKind.Resin, piece.Resin);
        foreach (var layer in piece.Layers)
        {
            AddMaterial(MaterialKind.Pigment, layer.Pigment);
        }
        foreach (var step in piece.Steps)
        {
            AddMaterial(MaterialKind.Lamp, step.Lamp);
        }
        // What a pigment's sheet was measured with.
        foreach (var pigment in piece.Layers.Select(l => l.Pigment).OfType<Pigment>())
        {
            AddMaterial(MaterialKind.Board, shelf.Board(pigment.Sheet.Backing.Value).Material);
            AddMaterial(MaterialKind.Resin, shelf.Resin(pigment.Sheet.Resin.Value).Material);
            AddMaterial(MaterialKind.Lamp, shelf.Lamp(pigment.Sheet.Lamp.Value).Material);
        }
        return inputs;

        void AddMaterial(MaterialKind kind, Material? material)
        {
            if (material?.Origin is { } origin)
            {
                Add($"{kind.Folder()}/{material.Name}", HashOf(new(origin.Path, origin.Text), (shelf, kind)));
            }
        }

        void Add(string name, string hash)
        {
            if (!inputs.Exists(i => i.Name == name))
            {
                inputs.Add(new(name, hash));
            }
        }
    }

    private static string HashOf(FileText file, (Shelf Shelf, MaterialKind Kind)? shelf)
    {
        if (Document.Read(file).Root is not { } root)
        {
            return LinesHashOf(file);
        }
        var hash = new InputHash();
        Add(hash, root);
        // A material that leans on another moves with it.
        if (
            shelf is { } at
            && root[Like] is ScalarNode like
            && at.Shelf.Any(at.Kind, like.Value).Material?.Origin is { } lender
        )
        {
            hash.Add(HashOf(new(lender.Path, lender.Text), shelf: null));
        }
        return Written(hash);
    }

    private static void Add(InputHash hash, DocumentNode node)
    {
        switch (node)
        {
            case MappingNode mapping:
                hash.Add("{");
                foreach (
                    var (key, value) in mapping.Entries.OrderBy(e => e.Key.Value, StringComparer.Ordinal)
                )
                {
                    hash.Add(key.Value);
                    Add(hash, value);
                }
                hash.Add("}");
                break;
            case ListNode list:
                hash.Add("[");
                foreach (var item in list.Items)
                {
                    Add(hash, item);
                }
                hash.Add("]");
                break;
            case ScalarNode { IsPlain: true } scalar when NumberText.TryRead(scalar.Value, out double number):
                hash.Add("#").Add(number);
                break;
            case ScalarNode scalar:
                hash.Add(scalar.Value.Trim());
                break;
        }
    }

    private static string LinesHashOf(FileText file)
    {
        var hash = new InputHash();
        foreach (var line in file.Text.AsSpan().EnumerateLines())
        {
            hash.Add(line.TrimEnd().ToString());
        }
        return Written(hash);
    }

    // With a letter in front: digits alone would be a number in YAML.
    private static string Written(InputHash hash) => $"fnv-{hash}";
}
