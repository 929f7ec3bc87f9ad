using System.Collections.Immutable;

namespace GlowMix.Documents;

/// <summary>
/// One small YAML file: keys with values, each with its place. Only the plain part of YAML is taken (no anchors, aliases
/// or tags, one document, little nesting), so that a file means what it seems to mean and cannot exhaust the machine.
/// </summary>
public sealed class Document
{
    /// <summary>The longest text accepted, in bytes of UTF-8: far above any recipe or material.</summary>
    public const int LongestBytes = 1_000_000;

    /// <summary>How deep lists and mappings may stand within each other.</summary>
    public const int DeepestNesting = 20;

    private Document(string name, string text, MappingNode? root, ImmutableArray<Problem> problems) =>
        (Name, Text, Root, Problems) = (name, text, root, problems);

    /// <summary>The file as the user named it.</summary>
    public string Name { get; }

    /// <summary>The whole text, without a byte order mark; the spans of the nodes count in it.</summary>
    public string Text { get; }

    /// <summary>The keys with values, or null if the text could not be read.</summary>
    public MappingNode? Root { get; }

    /// <summary>What is wrong with the text as YAML, in line order; empty exactly if there is a root.</summary>
    public ImmutableArray<Problem> Problems { get; }

    /// <summary>Reads a text. Never throws for what the text holds.</summary>
    public static Document Read(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = text.StartsWith('\uFEFF') ? text[1..] : text;
        var problems = new ProblemList(name);
        var root = DocumentParser.Parse(text, problems);
        return new(name, text, problems.HasErrors ? null : root, problems.InLineOrder());
    }

    /// <summary>Reads what <see cref="DocumentFile.Read"/> returned.</summary>
    public static Document Read(FileText file) =>
        file.Problem is null ? Read(file.Text, file.Name) : new(file.Name, "", null, [file.Problem]);
}
