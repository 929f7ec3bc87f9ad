namespace GlowMix.Materials;

/// <summary>An LED worked out from a reading or a label, or why that cannot be done.</summary>
/// <param name="Led">The LED, marked as a stand-in; null if there is a problem.</param>
/// <param name="Problem">One line for the user; null if there is an LED.</param>
public sealed record WorkedOutLed(Led? Led, string? Problem);
