namespace GlowMix.Recipes;

/// <summary>A LED known from the label on its reel.</summary>
/// <param name="CctK">Correlated colour temperature, K.</param>
/// <param name="Ra">General colour rendering index, or null if the label is silent.</param>
/// <param name="Ratings">Flux, currents and size.</param>
public sealed record LedByLabel(double CctK, double? Ra, LedRatings Ratings) : LedSource;
