namespace GlowMix.Console.Texts;

/// <summary>How a text for people is set.</summary>
/// <param name="Columns">Width at which lines break.</param>
/// <param name="Emphasis">Bold and faint letters by terminal codes.</param>
/// <param name="Ascii">Letters of ASCII only.</param>
internal readonly record struct TextStyle(int Columns, bool Emphasis = false, bool Ascii = false);
