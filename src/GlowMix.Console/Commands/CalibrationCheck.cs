using GlowMix.Documents;
using GlowMix.Materials.Calibrations;
using GlowMix.Readings.Files;

namespace GlowMix.Console.Commands;

/// <summary>Whether a calibration can be used, and still rests on the readings that it was fitted to.</summary>
internal static class CalibrationCheck
{
    /// <summary>Errors of the file; warnings about readings that have changed or gone.</summary>
    public static IReadOnlyList<Problem> ProblemsOf(FileText file, Surroundings surroundings)
    {
        var (calibration, problems) = CalibrationFile.Read(file);
        if (calibration is null)
        {
            return problems;
        }
        var found = new List<Problem>(problems);
        string folder = Path.GetDirectoryName(file.Name) ?? "";
        foreach (var reading in calibration.Readings)
        {
            string path = Path.Combine(folder, reading.File);
            var bytes = UserFile.ReadBytes(path, ReadingFile.LongestBytes, surroundings);
            string? wrong =
                bytes.Problem is not null ? $"its reading {reading.File} cannot be read any more"
                : Sha256.Of(bytes.Bytes.Span) != reading.Sha256
                    ? $"its reading {reading.File} has changed since the fit; fit again with 'glowmix fit'"
                : null;
            if (wrong is not null)
            {
                found.Add(new(file.Name, null, wrong, Severity.Warning));
            }
        }
        return found;
    }
}
