namespace GlowMix.Predictions.Kept;

/// <summary>Something a prediction was worked out from, and what it was like.</summary>
/// <param name="Name">'recipe', 'calibration', 'resins/epoxy-clear-slow', 'spectrum led.csv'.</param>
/// <param name="Hash">
/// The same as long as what is said stays the same: comments, blank lines, the order of keys and the writing of numbers do not
/// count.
/// </param>
public sealed record PredictionInput(string Name, string Hash);
