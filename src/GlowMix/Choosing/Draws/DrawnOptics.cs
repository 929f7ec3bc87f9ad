using GlowMix.Materials;
using GlowMix.Optics.Pour;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Choosing.Draws;

/// <summary>The optics of one drawn piece.</summary>
internal sealed class DrawnOptics(Resin resin, StreamShelf streams) : IOptics
{
    private readonly ResinOptics directions = new(
        resin.RefractiveIndex.Value,
        resin.AbsorptionPerMm.Value,
        streams.For
    );
    private readonly List<(PieceLayer Layer, ClassedGrains Grains)> layers = [];

    /// <summary>Tells the grains of a layer.</summary>
    public void Add(PieceLayer layer, ClassedGrains grains) => layers.Add((layer, grains));

    /// <inheritdoc/>
    public ResinOptics Of(Resin resin) => directions;

    /// <inheritdoc/>
    public ClassedGrains GrainsOf(Pigment pigment, Resin resin, double medianUm, double gsd) =>
        layers
            .First(l =>
                ReferenceEquals(l.Layer.Pigment, pigment)
                && l.Layer.GrainMedianUm == medianUm
                && l.Layer.GrainGsd == gsd
            )
            .Grains;
}
