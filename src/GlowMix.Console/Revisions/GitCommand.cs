using System.ComponentModel;
using System.Diagnostics;
using System.Text;

namespace GlowMix.Console.Revisions;

/// <summary>Runs git as a process of its own with a list of words, never through a shell.</summary>
internal sealed class GitCommand
{
    private readonly string program;
    private readonly string folder;

    private GitCommand(string program, string folder) => (this.program, this.folder) = (program, folder);

    /// <summary>What git said.</summary>
    /// <param name="IsDone">It ended with 0.</param>
    /// <param name="Bytes">Its output.</param>
    /// <param name="Complaint">The first line of what it complained of.</param>
    internal sealed record Answer(bool IsDone, ReadOnlyMemory<byte> Bytes, string Complaint)
    {
        /// <summary>The output as text, without the line end.</summary>
        public string Text => Encoding.UTF8.GetString(Bytes.Span).TrimEnd('\n', '\r');
    }

    /// <summary>Git as found on the user's path; null if there is none.</summary>
    /// <param name="folder">Where it is to look.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <remarks>The framework would look in the current folder first, where anybody may have put a program of that name.</remarks>
    public static GitCommand? Find(string folder, Surroundings surroundings)
    {
        string name = OperatingSystem.IsWindows() ? "git.exe" : "git";
        foreach (
            string place in (surroundings.Variable("PATH") ?? "").Split(
                Path.PathSeparator,
                StringSplitOptions.RemoveEmptyEntries
            )
        )
        {
            if (Path.IsPathFullyQualified(place) && File.Exists(Path.Combine(place, name)))
            {
                return new(Path.Combine(place, name), surroundings.FullPath(folder));
            }
        }
        return null;
    }

    /// <summary>Runs it.</summary>
    /// <param name="longestBytes">More output than this is not read.</param>
    /// <param name="words">Its words.</param>
    public Answer Run(int longestBytes, params ReadOnlySpan<string> words)
    {
        var start = new ProcessStartInfo(program)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            CreateNoWindow = true,
            WorkingDirectory = folder,
        };
        foreach (string word in words)
        {
            start.ArgumentList.Add(word);
        }
        // Nothing may ask, and nothing is fetched that is not here.
        start.Environment["GIT_TERMINAL_PROMPT"] = "0";
        start.Environment["GIT_NO_LAZY_FETCH"] = "1";
        start.Environment["GIT_OPTIONAL_LOCKS"] = "0";
        try
        {
            using var process = Process.Start(start)!;
            process.StandardInput.Close();
            var complaint = process.StandardError.ReadToEndAsync();
            var bytes = new byte[longestBytes + 1];
            int length = process.StandardOutput.BaseStream.ReadAtLeast(
                bytes,
                bytes.Length,
                throwOnEndOfStream: false
            );
            if (length > longestBytes)
            {
                process.Kill();
                process.WaitForExit();
                return new(false, default, $"more than {longestBytes / 1_000_000} MB");
            }
            process.WaitForExit();
            return new(
                process.ExitCode == 0,
                bytes.AsMemory(0, length),
                complaint.Result.Split('\n')[0].Replace("fatal: ", "", StringComparison.Ordinal)
            );
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or IOException)
        {
            return new(false, default, e.Message);
        }
    }
}
