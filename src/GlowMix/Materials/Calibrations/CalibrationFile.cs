using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Materials.Calibrations;

/// <summary>A calibration from a file, or what is wrong with the file.</summary>
/// <param name="Calibration">Null if there are errors.</param>
/// <param name="Problems">Errors and warnings in line order.</param>
public sealed record CalibrationFile(Calibration? Calibration, ImmutableArray<Problem> Problems)
{
    /// <summary>The first key of such a file, and its one value.</summary>
    public const string FormatKey = "calibration_format";

    /// <summary>The format written and read.</summary>
    public const int Format = 1;

    /// <summary>Reads what <see cref="DocumentFile.Read"/> returned. Never throws for what the file holds.</summary>
    public static CalibrationFile Read(FileText file)
    {
        var document = Document.Read(file);
        if (document.Root is not { } root)
        {
            return new(null, document.Problems);
        }
        var problems = new ProblemList(file.Name);
        var calibration = CalibrationReader.Read(root, file.Name, problems);
        return new(problems.HasErrors ? null : calibration, problems.InLineOrder());
    }
}
