namespace GlowMix.Readings.Fit;

/// <summary>A number that readings told.</summary>
/// <param name="Key">A short stable name: 'led.die_into_green', 'green-aluminate.trap_level'.</param>
/// <param name="Words">What it is, in words.</param>
/// <param name="Value">As fitted.</param>
/// <param name="StandardError">One standard deviation, widened where the model does not follow the readings.</param>
/// <param name="Start">As the materials have it.</param>
public sealed record FittedNumber(string Key, string Words, double Value, double StandardError, double Start);
