namespace GlowMix.Casting;

/// <summary>One layer's mix on the bench. Immutable.</summary>
public sealed record LayerMix
{
    /// <summary>Least room of a vacuum vessel over the volume of the mix, for the foam; one trade sheet asks for this.</summary>
    public const double LeastVesselPerMix = 5;

    /// <summary>Most room that is asked for, likewise; another trade sheet has 5 to 10.</summary>
    public const double MostVesselPerMix = 10;

    internal LayerMix(LayerBatch batch, WeighedBatch? weighed, CastingResin resin, double vacuumMin)
    {
        (Batch, Weighed) = (batch, weighed);
        double heaviestOnSheetG = resin.Flow.HeaviestOnSheetG;
        PigmentGoesIntoPartA = GoesIntoPartA(batch, resin);
        Cups = batch.ResinG is double resinG ? (int)Math.Ceiling(resinG / heaviestOnSheetG) : null;
        bool isDegassed = vacuumMin > 0;
        LeastVesselMl = isDegassed ? LeastVesselPerMix * batch.MixVolumeMl : null;
        MostVesselMl = isDegassed ? MostVesselPerMix * batch.MixVolumeMl : null;
    }

    /// <summary>The mix as computed.</summary>
    public LayerBatch Batch { get; }

    /// <summary>The masses as the scale shows them; null where a size of the pour is not known.</summary>
    public WeighedBatch? Weighed { get; }

    /// <summary>
    /// The pigment is stirred into part A before the pot life begins. False where A alone would be a paste: it then goes into
    /// A and B together; and for a clear mix.
    /// </summary>
    public bool PigmentGoesIntoPartA { get; }

    /// <summary>Cups to share the mix out to, so that none is heavier than the sheet tells; null without masses.</summary>
    public int? Cups { get; }

    /// <summary>Room of the vacuum vessel, ml; null without vacuum or where a size is not known.</summary>
    public double? LeastVesselMl { get; }

    /// <summary>Room of a vessel that is safe to foam in, ml; null likewise.</summary>
    public double? MostVesselMl { get; }

    // Part A alone is a smaller volume than both; its density is close to that of the mix.
    private static bool GoesIntoPartA(LayerBatch batch, CastingResin resin)
    {
        if (batch.Layer.Pigment is not { } pigment || batch.Layer.Loading == default)
        {
            return false;
        }
        double partA = (1 - batch.VolumeFraction) * resin.MassShareOfPartA;
        return pigment.Packing.Pours(batch.VolumeFraction / (batch.VolumeFraction + partA));
    }
}
