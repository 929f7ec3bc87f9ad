namespace GlowMix.Documents;

/// <summary>The text of a file, or the reason why there is none.</summary>
/// <param name="Name">The file as the user named it.</param>
/// <param name="Text">The text without a byte order mark; empty if there is a problem.</param>
/// <param name="Problem">Why the file could not be read, or null.</param>
public sealed record FileText(string Name, string Text, Problem? Problem = null);
