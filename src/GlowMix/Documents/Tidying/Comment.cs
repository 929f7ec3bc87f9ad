namespace GlowMix.Documents.Tidying;

/// <summary>A comment of a text.</summary>
/// <param name="Index">Of its '#'.</param>
/// <param name="Text">With the '#', without blanks at its end.</param>
/// <param name="Line">From 0.</param>
/// <param name="Column">From 0.</param>
/// <param name="IsAlone">Nothing but blanks in front of it on its line.</param>
/// <param name="IsSetOff">The line above is empty.</param>
internal sealed record Comment(int Index, string Text, int Line, int Column, bool IsAlone, bool IsSetOff);
