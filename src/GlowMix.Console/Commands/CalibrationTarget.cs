using GlowMix.Console.Files;
using GlowMix.Documents;
using GlowMix.Materials.Calibrations;

namespace GlowMix.Console.Commands;

/// <summary>Where the calibration of a recipe is kept: NAME.calibration.yaml beside it.</summary>
internal sealed class CalibrationTarget
{
    private readonly Surroundings surroundings;
    private readonly string folder;

    /// <param name="recipe">The recipe's file as the user named it.</param>
    /// <param name="surroundings">The world outside.</param>
    public CalibrationTarget(string recipe, Surroundings surroundings)
    {
        this.surroundings = surroundings;
        folder = Path.GetDirectoryName(recipe) ?? "";
        FileName = $"{Path.GetFileNameWithoutExtension(recipe)}.calibration.yaml";
        Name = Path.Combine(folder, FileName);
    }

    /// <summary>The file as the recipe names it.</summary>
    public string FileName { get; }

    /// <summary>The file in the user's words.</summary>
    public string Name { get; }

    /// <summary>A path of the user's as seen from the calibration, with slashes on every system.</summary>
    public string PathTo(string path) =>
        Path.GetRelativePath(surroundings.FullPath(folder), surroundings.FullPath(path)).Replace('\\', '/');

    /// <summary>What would keep a calibration from being written here; null if nothing would.</summary>
    public Problem? WrongWith()
    {
        if (!File.Exists(surroundings.FullPath(Name)))
        {
            return AtomicFile.Rehearse(Name, surroundings, IfThere.Keep);
        }
        var there = UserFile.Read(Name, surroundings);
        return there.Problem
            ?? (
                FileKind.FirstKey(there.Text) == CalibrationFile.FormatKey
                    ? AtomicFile.Rehearse(Name, surroundings)
                    : new Problem(
                        Name,
                        null,
                        "there is a file of this name that is no calibration; it stays, move it away to fit"
                    )
            );
    }

    /// <summary>Writes it whole or not at all.</summary>
    public Problem? Write(string text) => AtomicFile.Write(Name, text, surroundings);
}
