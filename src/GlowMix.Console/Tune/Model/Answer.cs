namespace GlowMix.Console.Tune.Model;

/// <summary>A figure in a line: what it is, how it is, how far from the start.</summary>
/// <param name="Label">One or two words.</param>
/// <param name="Text">The figure with its unit.</param>
/// <param name="Change">Since the start, with its sign; empty where there is none.</param>
internal readonly record struct Answer(string Label, string Text, string Change);
