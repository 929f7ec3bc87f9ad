using System.Collections.Concurrent;
using GlowMix.Optics.Pour;
using GlowMix.Optics.Slab;

namespace GlowMix.Choosing.Draws;

/// <summary>Directions of light by refractive index, each set worked out once. Safe to use from several threads.</summary>
/// <param name="few">
/// Whether draws make do with few directions: those of a piece with pigment, whose interpolated grains are no more exact than
/// that and whose light takes long to solve.
/// </param>
internal sealed class StreamShelf(bool few)
{
    private readonly ConcurrentDictionary<double, StreamQuadrature> sets = new();

    /// <summary>The directions of a pour for an index.</summary>
    public StreamQuadrature For(double index) =>
        sets.GetOrAdd(index, few ? ResinOptics.FewStreamsFor : ResinOptics.StreamsFor);
}
