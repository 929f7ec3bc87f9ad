namespace GlowMix.Documents;

/// <summary>What a problem is about; the program turns it into its exit code.</summary>
public enum ProblemKind
{
    /// <summary>The content of a file.</summary>
    Content,

    /// <summary>The file cannot be read at all: missing, a directory, no permission, a failing disk.</summary>
    FileAccess,
}
