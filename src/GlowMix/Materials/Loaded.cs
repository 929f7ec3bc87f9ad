using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>A material from the shelf, or why there is none.</summary>
/// <param name="Material">The material; null if its file has errors or is not there.</param>
/// <param name="Problems">Errors and warnings of the material's own file.</param>
/// <param name="NotFound">
/// Set exactly if no such material is there: what was looked for and the nearest name, to be told at the place that names it.
/// </param>
public sealed record Loaded<T>(T? Material, ImmutableArray<Problem> Problems, string? NotFound = null)
    where T : Material;
