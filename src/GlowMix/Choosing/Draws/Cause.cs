namespace GlowMix.Choosing.Draws;

/// <summary>Why figures are in doubt: numbers that one reading would settle together.</summary>
/// <param name="Key">A short stable word, with the material's or layer's name behind it where there may be several.</param>
/// <param name="What">What is in doubt, in words: 'grain absorption of green-aluminate'.</param>
/// <param name="Reading">What to measure, in words.</param>
public sealed record Cause(string Key, string What, string Reading);
