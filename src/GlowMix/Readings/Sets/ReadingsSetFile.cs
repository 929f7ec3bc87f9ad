using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Readings.Sets;

/// <summary>A set of readings from a file, or what is wrong with the file.</summary>
/// <param name="Set">Null if there are errors.</param>
/// <param name="Problems">Errors and warnings in line order.</param>
public sealed record ReadingsSetFile(ReadingsSet? Set, ImmutableArray<Problem> Problems)
{
    /// <summary>The first key of such a file.</summary>
    public const string FormatKey = "readings_format";

    /// <summary>The format read.</summary>
    public const int Format = 1;

    /// <summary>Reads what <see cref="DocumentFile.Read"/> returned. Never throws for what the file holds.</summary>
    public static ReadingsSetFile Read(FileText file)
    {
        var document = Document.Read(file);
        if (document.Root is not { } root)
        {
            return new(null, document.Problems);
        }
        var problems = new ProblemList(file.Name);
        var set = ReadingsSetReader.Read(root, file.Name, problems);
        return new(problems.HasErrors ? null : set, problems.InLineOrder());
    }
}
