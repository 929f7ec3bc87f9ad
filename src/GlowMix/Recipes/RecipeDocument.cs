using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Recipes;

/// <summary>
/// A recipe's text with what it means. A changed recipe is made by changing the text and reading it again, so that there
/// is one way to a recipe, and every rule holds for what a search or a sweep tries.
/// </summary>
public sealed class RecipeDocument
{
    private readonly Document document;

    private RecipeDocument(Document document, Recipe? recipe, ImmutableArray<Problem> problems) =>
        (this.document, Recipe, Problems) = (document, recipe, problems);

    /// <summary>The file as the user named it.</summary>
    public string Name => document.Name;

    /// <summary>The text, comments and all.</summary>
    public string Text => document.Text;

    /// <summary>The recipe, or null if the text has errors.</summary>
    public Recipe? Recipe { get; }

    /// <summary>Errors and warnings in line order.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>Reads a text. Never throws for what the text holds.</summary>
    public static RecipeDocument Read(string text, string name) => Of(Document.Read(text, name));

    /// <summary>Reads what <see cref="DocumentFile.Read"/> returned.</summary>
    public static RecipeDocument Read(FileText file) => Of(Document.Read(file));

    /// <summary>The full path of a key: 'loading_percent' → 'layers.glow.loading_percent'.</summary>
    /// <param name="keyPath">A full path, or its last words where they are unambiguous.</param>
    /// <param name="fullPath">The full path; empty if there is none.</param>
    /// <param name="problem">Why there is none; empty otherwise.</param>
    public bool TryResolve(string keyPath, out string fullPath, out string problem)
    {
        var (path, reason) = document.Root is null
            ? (null, RecipeTexts.UnknownKeyPath(keyPath, null))
            : KeyPaths.Resolve(document.Root, keyPath);
        (fullPath, problem) = (path ?? "", reason ?? "");
        return path is not null;
    }

    /// <summary>What is known of a key: its kind, range and words.</summary>
    /// <exception cref="ArgumentException">There is no such key in this recipe.</exception>
    public RecipeKey KeyOf(string keyPath) => RecipeKeys.Find(KeyPaths.PatternOf(Resolve(keyPath)))!;

    /// <summary>The value of a key as it is written, or null if it is not.</summary>
    /// <exception cref="ArgumentException">There is no such key in this recipe.</exception>
    public string? Get(string keyPath) =>
        KeyPaths.Find(document.Root!, Resolve(keyPath)) is ScalarNode { IsEmpty: false } scalar
            ? scalar.Value
            : null;

    /// <summary>The recipe with another number; whether the number is allowed stands in the result's problems.</summary>
    /// <exception cref="ArgumentException">There is no such key in this recipe.</exception>
    public RecipeDocument With(string keyPath, double value) => With(keyPath, NumberText.Write(value));

    /// <summary>The recipe with another value; whether it is allowed stands in the result's problems.</summary>
    /// <remarks>
    /// The key is added where it is missing; where another key says the same (loading_g_per_100g_resin instead of
    /// loading_percent), it is replaced.
    /// </remarks>
    /// <exception cref="ArgumentException">There is no such key in this recipe.</exception>
    public RecipeDocument With(string keyPath, string value)
    {
        var edits = RecipeEdit.Set(document, Resolve(keyPath), ScalarText.Of(value));
        return Read(SourceText.Apply(document.Text, edits), document.Name);
    }

    /// <summary>Every key that is written with a value, in canonical order.</summary>
    public IEnumerable<WrittenKey> Written()
    {
        if (document.Root is not { } root)
        {
            yield break;
        }
        foreach (var key in RecipeKeys.All)
        {
            foreach (string path in KeyPaths.Expand(root, key.Path))
            {
                string? value = KeyPaths.Find(root, path) switch
                {
                    ScalarNode { IsEmpty: false } scalar => scalar.Value,
                    ListNode list => string.Join(", ", list.Items.OfType<ScalarNode>().Select(s => s.Value)),
                    _ => null,
                };
                if (value is not null)
                {
                    yield return new(path, key, value);
                }
            }
        }
    }

    private string Resolve(string keyPath) =>
        TryResolve(keyPath, out string path, out string problem)
            ? path
            : throw new ArgumentException(problem, nameof(keyPath));

    private static RecipeDocument Of(Document document)
    {
        if (document.Root is null)
        {
            return new(document, null, document.Problems);
        }
        var problems = new ProblemList(document.Name);
        var recipe = RecipeReader.Read(document, problems);
        return new(document, problems.HasErrors ? null : recipe, problems.InLineOrder());
    }
}
