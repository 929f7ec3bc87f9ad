using System.Security;
using System.Text;
using GlowMix.Documents;

namespace GlowMix.Console.Tables;

/// <summary>
/// Writes files of one folder, all or none of them: each first under another name beside its own, so that nobody ever sees
/// half a file.
/// </summary>
internal static class WrittenFiles
{
    /// <summary>Writes the files; those of the same name are replaced.</summary>
    /// <param name="folder">Full path; made if it is not there.</param>
    /// <param name="folderAsNamed">The folder in the user's words, for the problem.</param>
    /// <param name="files">Names and contents.</param>
    /// <param name="what">What they are, for the problem.</param>
    /// <returns>What kept the files from being written, or null.</returns>
    public static Problem? Write(
        string folder,
        string folderAsNamed,
        IEnumerable<(string Name, string Content)> files,
        string what = "the tables"
    )
    {
        var written = new List<(string Temporary, string Final)>();
        try
        {
            if (File.Exists(folder))
            {
                throw new IOException("this is a file; needed: a folder");
            }
            Directory.CreateDirectory(folder);
            foreach (var (name, content) in files)
            {
                string final = Path.Combine(folder, name);
                string temporary = $"{final}.{Environment.ProcessId}.tmp";
                if (Directory.Exists(final))
                {
                    throw new IOException($"{name} is a folder there; needed: a place for a file");
                }
                written.Add((temporary, final));
                File.WriteAllText(temporary, content, new UTF8Encoding(false));
            }
            foreach (var (temporary, final) in written)
            {
                File.Move(temporary, final, overwrite: true);
            }
            return null;
        }
        catch (Exception e)
            when (e
                    is IOException
                        or UnauthorizedAccessException
                        or SecurityException
                        or NotSupportedException
            )
        {
            return new(
                folderAsNamed,
                null,
                $"{what} cannot be written here: {ReasonOf(e)}",
                Kind: ProblemKind.FileAccess
            );
        }
        finally
        {
            foreach (var (temporary, _) in written)
            {
                Discard(temporary);
            }
        }
    }

    // The system's words name a temporary file the user has never seen.
    private static string ReasonOf(Exception e) =>
        e switch
        {
            UnauthorizedAccessException or SecurityException => "no permission",
            DirectoryNotFoundException => "part of the path is no folder",
            _ => e.Message,
        };

    private static void Discard(string temporary)
    {
        try
        {
            File.Delete(temporary);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The write itself has failed already, and that is what the user is told.
        }
    }
}
