namespace GlowMix.Recipes;

/// <summary>A LED whose spectrum somebody measured.</summary>
/// <param name="SpectrumPath">The file, relative to the recipe; see <see cref="SpectrumFile"/>.</param>
/// <param name="Ratings">Flux, currents and size; the spectrum gives the shape only.</param>
public sealed record LedBySpectrum(string SpectrumPath, LedRatings Ratings) : LedSource;
