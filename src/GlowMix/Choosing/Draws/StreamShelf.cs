using System.Collections.Concurrent;
using GlowMix.Optics.Pour;
using GlowMix.Optics.Slab;

namespace GlowMix.Choosing.Draws;

/// <summary>Directions of light by refractive index, each set worked out once. Safe to use from several threads.</summary>
internal sealed class StreamShelf
{
    private readonly ConcurrentDictionary<double, StreamQuadrature> sets = new();

    /// <summary>The directions of a pour for an index.</summary>
    public StreamQuadrature For(double index) => sets.GetOrAdd(index, ResinOptics.StreamsFor);
}
