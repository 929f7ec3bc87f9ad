using System.Collections.Immutable;

namespace GlowMix.Casting;

/// <summary>One layer of all test tiles: A and B mixed once, so that the tiles differ by their pigment alone. Immutable.</summary>
public sealed record TileMix
{
    /// <summary>The layer as planned.</summary>
    public required CastingLayer Layer { get; init; }

    /// <summary>A and B for all cups, as the scale shows them.</summary>
    public required WeighedBatch Parts { get; init; }

    /// <summary>A and B that the three tiles take, waste included, g; what is mixed beyond is for the scale's sake.</summary>
    public required double NeededG { get; init; }

    /// <summary>One a tile; a clear layer is poured from the mix itself, the same for each.</summary>
    public required ImmutableArray<TileCup> Cups { get; init; }

    /// <summary>Volume of all cups, ml.</summary>
    public required double MixVolumeMl { get; init; }

    /// <summary>Pot life of A and B in one vessel, min.</summary>
    public required double PotLifeMin { get; init; }

    /// <summary>Pot life less stirring (once together, once in the cups) and vacuum, min.</summary>
    public required double DegasWindowMin { get; init; }
}
