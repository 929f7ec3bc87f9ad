using System.Security;
using GlowMix.Documents;

namespace GlowMix.Console.Files;

/// <summary>
/// The one place where files are written. Whatever ends the program, at any moment, the file is the old one or the new one,
/// whole: the new text is written under another name in the same folder, brought to the disk, and then takes the place of the
/// old file in one step of the system. Two writers at once leave the text of one of them.
/// </summary>
/// <remarks>
/// A symbolic link stays a link: the file it leads to is replaced. Permissions stay as they were. A file with a second name
/// (a hard link) parts from it. A file that may not be written stays, though its folder would let it be replaced.
/// </remarks>
internal static class AtomicFile
{
    /// <summary>Writes one file.</summary>
    /// <param name="path">As the user names it. Its folder must be there.</param>
    /// <param name="content">The whole text; written in UTF-8 without byte order mark.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <param name="ifThere">What becomes of a file of this name.</param>
    /// <param name="asRead">
    /// The text that the new one was made from, if it was: a file that somebody else has changed since then is kept.
    /// </param>
    /// <returns>What kept the file from being written, or null.</returns>
    public static Problem? Write(
        string path,
        string content,
        Surroundings surroundings,
        IfThere ifThere = IfThere.Replace,
        string? asRead = null
    )
    {
        try
        {
            if (path.Length == 0 || Path.EndsInDirectorySeparator(path))
            {
                return ProblemOf(path.Length == 0 ? "''" : path, FileTexts.NameMissing);
            }
            if (asRead is not null && HasChanged(path, asRead, surroundings))
            {
                return ProblemOf(path, FileTexts.ChangedSinceRead);
            }
            using var pending = PendingFile.Write(surroundings.FullPath(path), content, ifThere);
            pending.Commit();
            return null;
        }
        catch (Exception e) when (IsOfFiles(e))
        {
            return ProblemOf(path, FileTexts.CannotBeWritten("", e));
        }
    }

    /// <summary>Whether a file could be written now: to be asked before the work whose result it is to hold.</summary>
    /// <returns>What would keep the file from being written, or null.</returns>
    public static Problem? Rehearse(string path, Surroundings surroundings, IfThere ifThere = IfThere.Replace)
    {
        try
        {
            if (path.Length == 0 || Path.EndsInDirectorySeparator(path))
            {
                return ProblemOf(path.Length == 0 ? "''" : path, FileTexts.NameMissing);
            }
            using var pending = PendingFile.Write(surroundings.FullPath(path), "", ifThere);
            return null;
        }
        catch (Exception e) when (IsOfFiles(e))
        {
            return ProblemOf(path, FileTexts.CannotBeWritten("", e));
        }
    }

    /// <summary>Writes files into one folder, all or none of them; those of the same names are replaced.</summary>
    /// <param name="folder">As the user names it; made if it is not there.</param>
    /// <param name="files">Names and contents.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <returns>What kept the files from being written, or null.</returns>
    /// <remarks>Each takes its place in one step, all of them do not: between two of those steps some are new, some old.</remarks>
    public static Problem? WriteAll(
        string folder,
        IEnumerable<(string Name, string Content)> files,
        Surroundings surroundings
    )
    {
        var pending = new List<PendingFile>();
        string name = "";
        try
        {
            string full = surroundings.FullPath(folder);
            if (File.Exists(full))
            {
                return ProblemOf(folder, FileTexts.FolderIsFile);
            }
            Directory.CreateDirectory(full);
            foreach (var file in files)
            {
                name = file.Name;
                pending.Add(PendingFile.Write(Path.Combine(full, name), file.Content, IfThere.Replace));
            }
            foreach (var file in pending)
            {
                file.Commit();
            }
            return null;
        }
        catch (Exception e) when (IsOfFiles(e))
        {
            return ProblemOf(folder, FileTexts.CannotBeWritten(name, e));
        }
        finally
        {
            foreach (var file in pending)
            {
                file.Dispose();
            }
        }
    }

    private static bool HasChanged(string path, string asRead, Surroundings surroundings)
    {
        var now = DocumentFile.Read(surroundings.FullPath(path));
        return now.Problem is not null || now.Text != asRead;
    }

    private static bool IsOfFiles(Exception e) =>
        e
            is IOException
                or UnauthorizedAccessException
                or SecurityException
                or NotSupportedException
                or ArgumentException;

    private static Problem ProblemOf(string path, string text) =>
        new(path, null, text, Kind: ProblemKind.FileAccess);
}
