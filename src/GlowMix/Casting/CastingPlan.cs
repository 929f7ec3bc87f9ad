using System.Collections.Immutable;
using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>What to mix for a piece or several, and whether it pours, settles and can be degassed in time. Immutable.</summary>
/// <remarks>
/// One mix a layer. Volumes, masses and cost are sums over the layers and null where a size or price is not known; where
/// layers differ, viscosity and settling are the largest, the degas window the smallest, and the loading that of the layer
/// loaded most.
/// </remarks>
public sealed class CastingPlan
{
    private CastingPlan(ImmutableArray<LayerBatch> layers) => Layers = layers;

    /// <summary>The layers from the board up.</summary>
    public ImmutableArray<LayerBatch> Layers { get; }

    /// <summary>Volume of all mixes, waste included, ml.</summary>
    public double? MixVolumeMl => Sum(layer => layer.MixVolumeMl);

    /// <summary>Part A of all mixes, g.</summary>
    public double? PartAG => Sum(layer => layer.PartAG);

    /// <summary>Part B of all mixes, g.</summary>
    public double? PartBG => Sum(layer => layer.PartBG);

    /// <summary>Pigment of all mixes, g.</summary>
    public double? PigmentG => Sum(layer => layer.PigmentG);

    /// <summary>Pigment per 100 g of parts A and B, in the layer loaded most, g.</summary>
    public double PigmentGPer100GResin => MostLoaded.Layer.Loading.GPer100GResin;

    /// <summary>Grain volume over volume of the mix, in the layer loaded most, %.</summary>
    public double PigmentVolumePercent => MostLoaded.PigmentVolumePercent;

    /// <summary>Viscosity of the thickest fresh mix, mPa·s; null if a layer does not pour.</summary>
    public double? ViscosityMPaS =>
        Layers.All(layer => layer.Pours) ? Layers.Max(layer => layer.ViscosityMPaS) : null;

    /// <summary>The farthest fall of a layer's median grain, mm.</summary>
    public double SettledMm => Layers.Max(layer => layer.SettledMm);

    /// <summary>The shortest time left for degassing, min.</summary>
    public double DegasWindowMin => Layers.Min(layer => layer.DegasWindowMin);

    /// <summary>Cost of all mixes.</summary>
    public double? Cost => Sum(layer => layer.Cost);

    private LayerBatch MostLoaded => Layers.MaxBy(layer => layer.VolumeFraction)!;

    /// <summary>Plans a piece.</summary>
    /// <param name="pour">The channel and its packages.</param>
    /// <param name="layers">One or more, from the board up.</param>
    /// <param name="resin">The resin of all layers.</param>
    /// <param name="mixing">How it is mixed, and what it costs.</param>
    /// <exception cref="ArgumentException">No layer, a depth of 0, a loading without a pigment, a pigment lighter than the resin, or packages that do not fit.</exception>
    public static CastingPlan Of(
        CastingPour pour,
        ImmutableArray<CastingLayer> layers,
        CastingResin resin,
        Mixing mixing
    )
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(resin);
        ArgumentNullException.ThrowIfNull(mixing);
        if (layers.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A piece has at least one layer.", nameof(layers));
        }
        var batches = ImmutableArray.CreateBuilder<LayerBatch>(layers.Length);
        double fromMm = 0;
        foreach (CastingLayer layer in layers)
        {
            Demand.Positive(layer.DepthMm, "depth", "mm");
            if (layer.Pigment is null && layer.Loading != default)
            {
                throw new ArgumentException(
                    $"The layer '{layer.Name}' has a loading but no pigment.",
                    nameof(layers)
                );
            }
            batches.Add(Batch(layer, pour.LayerVolumeMl(fromMm, layer.DepthMm), resin, mixing));
            fromMm += layer.DepthMm;
        }
        return new(batches.DrainToImmutable());
    }

    private static LayerBatch Batch(CastingLayer layer, double? pourMl, CastingResin resin, Mixing mixing)
    {
        double fraction = layer.Pigment is { } pigment
            ? layer.Loading.VolumeFraction(pigment.DensityGPerCm3, resin.DensityMixGPerCm3)
            : 0;
        double? mixMl = mixing.Pieces * pourMl * (1 + (mixing.WastePercent / 100));
        double? resinG = mixMl * (1 - fraction) * resin.DensityMixGPerCm3;
        double? pigmentG = layer.Pigment is null
            ? mixMl * 0
            : mixMl * fraction * layer.Pigment.DensityGPerCm3;
        double potLifeMin = resin.Flow.PotLifeMin(resinG, mixing.TemperatureC);
        double gelMin = resin.Flow.GelTimeMin(resinG, mixing.TemperatureC);
        double pouredMin = mixing.StirringMin + mixing.VacuumMin;
        double resinMPaS = resin.Flow.ViscosityMPaS(mixing.TemperatureC);
        double fallMin = Settling.EquivalentFreshMin(pouredMin, gelMin, potLifeMin);
        var falls = Falls(
            layer.Pigment,
            fraction,
            resin.DensityMixGPerCm3,
            resinMPaS,
            fallMin,
            mixing.TemperatureC
        );
        return new()
        {
            Layer = layer,
            PourVolumeMl = pourMl,
            MixVolumeMl = mixMl,
            PartAG = resinG * resin.MassShareOfPartA,
            PartBG = resinG * (1 - resin.MassShareOfPartA),
            PigmentG = pigmentG,
            VolumeFraction = fraction,
            ViscosityMPaS = resinMPaS * RelativeViscosity(layer, fraction),
            PotLifeMin = potLifeMin,
            IsHeavierThanSheet = resinG is double grams && resin.Flow.IsBeyondSheet(grams),
            GelTimeMin = gelMin,
            DegasWindowMin = potLifeMin - pouredMin,
            SettledMm = Math.Min(falls.MedianMm, ClearableMm(layer, fraction)),
            ClassFallsMm = falls.ClassesMm,
            Cost = CostOf(resinG, pigmentG, mixing),
        };
    }

    private static double? RelativeViscosity(CastingLayer layer, double fraction) =>
        layer.Pigment is { } pigment ? pigment.Packing.RelativeViscosity(fraction) : 1;

    // The resin's own viscosity, not the mix's: the hindrance already holds what the other grains do.
    private static (double MedianMm, ImmutableArray<double> ClassesMm) Falls(
        CastingPigment? pigment,
        double fraction,
        double resinGPerCm3,
        double resinMPaS,
        double freshMin,
        double temperatureC
    )
    {
        if (pigment is null)
        {
            return (0, []);
        }
        double difference = pigment.DensityGPerCm3 - resinGPerCm3;
        if (difference <= 0)
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"The pigment ({pigment.DensityGPerCm3:0.##} g/cm³) must be denser than the resin ({resinGPerCm3:0.##} g/cm³)."
                )
            );
        }
        double FallMm(double diameterUm) =>
            Settling.StokesMmPerMin(diameterUm, difference, resinMPaS)
            * Settling.HinderedShare(fraction, Settling.PecletNumber(diameterUm, difference, temperatureC))
            * freshMin;
        return (FallMm(pigment.Grains.MedianUm), [.. pigment.Grains.DiametersUm.Select(FallMm)]);
    }

    // What stands clear over the bed once every grain lies in it.
    private static double ClearableMm(CastingLayer layer, double fraction) =>
        layer.Pigment is { } pigment
            ? layer.DepthMm * Math.Max(0, 1 - (fraction / pigment.Packing.BedFraction))
            : 0;

    private static double? CostOf(double? resinG, double? pigmentG, Mixing mixing)
    {
        double? pigmentCost = pigmentG == 0 ? 0 : pigmentG * mixing.PigmentPerKg / 1000;
        return (resinG * mixing.ResinPerKg / 1000) + pigmentCost;
    }

    private double? Sum(Func<LayerBatch, double?> part)
    {
        double? sum = 0;
        foreach (LayerBatch layer in Layers)
        {
            sum += part(layer);
        }
        return sum;
    }
}
