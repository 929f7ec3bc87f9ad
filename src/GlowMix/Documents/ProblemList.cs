using System.Collections.Immutable;

namespace GlowMix.Documents;

/// <summary>Gathers the problems of one file while it is read, so that all are told at once.</summary>
public sealed class ProblemList(string file)
{
    private readonly List<Problem> problems = [];

    /// <summary>The file as the user named it.</summary>
    public string File { get; } = file;

    /// <summary>An error is among them.</summary>
    public bool HasErrors => problems.Exists(p => p.Severity == Severity.Error);

    /// <summary>Adds an error.</summary>
    public void Error(Place? place, string text) => problems.Add(new(File, place, text));

    /// <summary>Adds a warning.</summary>
    public void Warning(Place? place, string text) => problems.Add(new(File, place, text, Severity.Warning));

    /// <summary>Adds problems found elsewhere.</summary>
    public void AddRange(IEnumerable<Problem> found) => problems.AddRange(found);

    /// <summary>All, in the order of their lines; those of the whole file first.</summary>
    public ImmutableArray<Problem> InLineOrder() =>
        problems.Count < 2 ? [.. problems] : [.. problems.OrderBy(p => p.Place ?? default)];
}
