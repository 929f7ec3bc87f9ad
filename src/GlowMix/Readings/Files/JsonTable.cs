namespace GlowMix.Readings.Files;

/// <summary>A table found in JSON.</summary>
/// <param name="Text">Cells between tabs.</param>
/// <param name="HeaderLines">Lines above its rows.</param>
internal sealed record JsonTable(string Text, int HeaderLines);
