namespace GlowMix.Documents;

/// <summary>The bytes of a file, or the reason why there are none.</summary>
/// <param name="Name">The file as the user named it.</param>
/// <param name="Bytes">All of it; empty if there is a problem.</param>
/// <param name="Problem">Why the file could not be read, or null.</param>
public sealed record FileBytes(string Name, ReadOnlyMemory<byte> Bytes, Problem? Problem = null);
