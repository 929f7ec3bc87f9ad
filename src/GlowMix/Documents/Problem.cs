namespace GlowMix.Documents;

/// <summary>Something to tell the user about a file: a value until the program prints it.</summary>
/// <param name="File">The file as the user named it.</param>
/// <param name="Place">Where in the file, or null if it concerns the whole of it.</param>
/// <param name="Text">What is wrong, what is allowed, what to write instead; one line.</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="Kind">The content, or the access to the file.</param>
public sealed record Problem(
    string File,
    Place? Place,
    string Text,
    Severity Severity = Severity.Error,
    ProblemKind Kind = ProblemKind.Content
)
{
    /// <summary>'file:line:column: text', or 'file: text' without a place.</summary>
    public override string ToString() => Place is { } place ? $"{File}:{place}: {Text}" : $"{File}: {Text}";
}
