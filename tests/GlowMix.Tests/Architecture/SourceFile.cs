using System.Text.RegularExpressions;

namespace GlowMix.Tests.Architecture;

/// <summary>A source file of the model as far as its surroundings go: where it lies and which names it uses on which line.</summary>
internal sealed partial class SourceFile
{
    private readonly string[] code;

    /// <param name="path">Below src/GlowMix, with forward slashes.</param>
    /// <param name="text">What is in it.</param>
    public SourceFile(string path, string text)
    {
        Path = path;
        code = [.. text.Split('\n').Select(line => CommentOrText().Replace(line, "\"\""))];
    }

    public string Path { get; }

    /// <summary>The folder below src/GlowMix, with dots: 'Optics.Slab'.</summary>
    public string Folder =>
        (System.IO.Path.GetDirectoryName(Path) ?? "").Replace('\\', '/').Replace('/', '.');

    /// <summary>Every source file of the model.</summary>
    public static SourceFile[] OfTheModel()
    {
        string root = System.IO.Path.Combine(TopFolder(), "src", "GlowMix");
        return
        [
            .. Directory
                .EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
                .Select(file =>
                    (File: file, Path: System.IO.Path.GetRelativePath(root, file).Replace('\\', '/'))
                )
                .Where(f =>
                    !f.Path.StartsWith("obj/", StringComparison.Ordinal)
                    && !f.Path.StartsWith("bin/", StringComparison.Ordinal)
                )
                .OrderBy(f => f.Path, StringComparer.Ordinal)
                .Select(f => new SourceFile(f.Path, File.ReadAllText(f.File))),
        ];
    }

    /// <summary>The namespace that the file declares, without 'GlowMix.'; null without one.</summary>
    public string? Namespace() =>
        code.Select(line => Declaration().Match(line))
            .Where(m => m.Success)
            .Select(m => m.Groups["name"].Value)
            .FirstOrDefault();

    /// <summary>
    /// Names below GlowMix that the file uses: in using lines, written out, and (since a namespace sees those beside it without
    /// any using) as 'Folder.Type' where <paramref name="types"/> knows such a type.
    /// </summary>
    public IEnumerable<(int Line, string Name)> Uses(IReadOnlySet<string> types)
    {
        for (int i = 0; i < code.Length; i++)
        {
            if (Declaration().IsMatch(code[i]))
            {
                continue;
            }
            foreach (Match m in WrittenOut().Matches(code[i]))
            {
                yield return (i + 1, m.Groups["name"].Value);
            }
            foreach (Match m in Dotted().Matches(code[i]))
            {
                string name = m.Value;
                while (name.Contains('.', StringComparison.Ordinal) && !types.Contains(name))
                {
                    name = name[..name.LastIndexOf('.')];
                }
                if (types.Contains(name))
                {
                    yield return (i + 1, name);
                }
            }
        }
    }

    /// <summary>Lines of code that a pattern is found on.</summary>
    public IEnumerable<(int Line, string Found)> Lines(Regex pattern) =>
        code.SelectMany((line, i) => pattern.Matches(line).Select(m => (i + 1, m.Value)));

    private static string TopFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(folder.FullName, "GlowMix.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("No GlowMix.sln above the tests.");
        }
        return folder.FullName;
    }

    [GeneratedRegex(@"//.*$|""(\\.|[^""\\])*""")]
    private static partial Regex CommentOrText();

    [GeneratedRegex(@"^\s*namespace\s+GlowMix(\.(?<name>[\w.]+))?")]
    private static partial Regex Declaration();

    [GeneratedRegex(@"(?<![\w.])(global::)?GlowMix\.(?<name>\w+(\.\w+)*)")]
    private static partial Regex WrittenOut();

    [GeneratedRegex(@"(?<![\w.])[A-Z]\w*(\.\w+)+")]
    private static partial Regex Dotted();
}
