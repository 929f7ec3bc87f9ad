using GlowMix.Documents;

namespace GlowMix.Console.Revisions;

/// <summary>The files of a folder as they were at one revision of its repository.</summary>
internal sealed class Revision
{
    private const int LongestListBytes = 1_000_000;
    private const int ShownHashDigits = 10;

    private readonly GitCommand git;
    private readonly string hash;

    private Revision(GitCommand git, string hash, string name) =>
        (this.git, this.hash, Name) = (git, hash, name);

    /// <summary>As the user named it, and its hash: 'v1.0 (3f2a1c9b07)'.</summary>
    public string Name { get; }

    /// <summary>Finds a revision.</summary>
    /// <param name="folder">The folder, in the user's words.</param>
    /// <param name="revision">What the user calls it: a tag, a branch, a hash, 'HEAD~3'.</param>
    /// <param name="surroundings">The world outside.</param>
    /// <param name="problem">Why there is none, and with which exit code.</param>
    public static Revision? Find(
        string folder,
        string revision,
        Surroundings surroundings,
        out (string Text, int Code) problem
    )
    {
        problem = default;
        string told = folder.Length == 0 ? "this folder" : ProblemTexts.Quote(folder);
        if (!Directory.Exists(surroundings.FullPath(folder)))
        {
            problem = ($"{told}: there is no such folder", ExitCode.FileAccess);
            return null;
        }
        if (GitCommand.Find(folder, surroundings) is not { } git)
        {
            problem = ("--since needs the program git, and it is not on the path", ExitCode.FileAccess);
            return null;
        }
        var inside = git.Run(LongestListBytes, "rev-parse", "--is-inside-work-tree");
        if (!inside.IsDone || inside.Text != "true")
        {
            problem = inside.Complaint.StartsWith("not a git repository", StringComparison.Ordinal)
                ? (
                    $"{told} is not under version control by git, so --since has nothing to look at",
                    ExitCode.Content
                )
                : (
                    $"git cannot look at {told}: {(inside.Complaint.Length > 0 ? inside.Complaint : "no working tree")}",
                    ExitCode.Content
                );
            return null;
        }
        // What begins with a hyphen would be an option to git, whatever it stands behind.
        var commit =
            revision.Length == 0 || revision[0] == '-'
                ? new GitCommand.Answer(false, default, "")
                : git.Run(LongestListBytes, "rev-parse", "--verify", "--quiet", revision + "^{commit}");
        if (!commit.IsDone)
        {
            problem = (
                $"git knows no revision {ProblemTexts.Quote(revision)}; it can be a tag, a branch, a hash, or HEAD~1 for the one before",
                ExitCode.Content
            );
            return null;
        }
        return new(git, commit.Text, $"{revision} ({commit.Text[..ShownHashDigits]})");
    }

    /// <summary>A file as it was; null if it was not there.</summary>
    /// <param name="path">From the folder, with slashes; within the repository.</param>
    public FileText? Read(string path)
    {
        string name = $"{path} at {Name}";
        string inside = "./" + path.Replace('\\', '/');
        if (
            git.Run(LongestListBytes, "cat-file", "-t", $"{hash}:{inside}")
            is not { IsDone: true, Text: "blob" }
        )
        {
            return null;
        }
        var answer = git.Run(Document.LongestBytes, "cat-file", "blob", $"{hash}:{inside}");
        return answer.IsDone
            ? DocumentFile.Decode(answer.Bytes.Span, name)
            : new(name, "", new(name, null, ProblemTexts.CannotBeRead(answer.Complaint)));
    }

    /// <summary>Names of the files in a folder as it was.</summary>
    public IReadOnlyList<string> Names(string folder)
    {
        var answer = git.Run(
            LongestListBytes,
            "-c",
            "core.quotePath=false",
            "ls-tree",
            "--name-only",
            hash,
            "--",
            $"./{folder}/"
        );
        return answer.IsDone
            ?
            [
                .. answer
                    .Text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                    .Select(n => n[(n.LastIndexOf('/') + 1)..]),
            ]
            : [];
    }
}
