using System.Collections.Concurrent;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// A pigment's grains in a resin at all sizes that a doubt of the median reaches: one <see cref="GrainGrid"/> about the stated
/// median where that is near enough, else one about each of several medians, worked out when first asked for. Safe to use from
/// several threads.
/// </summary>
/// <remarks>
/// A grid is good to a fifth of a percent a fifth of the size either way, and to two percent of 1 − g a third; carried on to three
/// times the size it makes 1 − g a third of what it is. Each grid takes some fifteen averages: closer ones would cost too much.
/// </remarks>
internal sealed class GrainSpan
{
    /// <summary>How far one grid goes, as a factor either way.</summary>
    private const double Reach = 1.3;

    private const double LeastMedianUm = 0.1;
    private const double MostMedianUm = 300;
    private static readonly double LogStep = 2 * Math.Log(Reach);

    private readonly ConcurrentDictionary<int, Lazy<GrainGrid>> grids = new();
    private readonly Func<int, GrainGrid> gridAt;
    private readonly bool isOne;
    private readonly double leastFactor;
    private readonly double mostFactor;

    /// <param name="pigment">As it stands.</param>
    /// <param name="resin">As it stands.</param>
    /// <param name="medianUm">Median diameter as it stands.</param>
    /// <param name="gsd">Its spread.</param>
    /// <param name="sizeFactor">Doubt of the median as a factor; 1 where it is not drawn.</param>
    /// <param name="optics">Who has the grains as they stand.</param>
    public GrainSpan(
        Pigment pigment,
        Resin resin,
        double medianUm,
        double gsd,
        double sizeFactor,
        OpticsShelf optics
    )
    {
        double most = Math.Min(MostMedianUm, LargestMedianUm(resin, gsd)) / medianUm;
        // Grids are made of averages a little beyond their reach.
        leastFactor = Math.Min(1, LeastMedianUm / medianUm * GrainNodes.BeyondReach(Reach));
        mostFactor = Math.Max(1, most / GrainNodes.BeyondReach(Reach));
        // About a median so near the end of what is computed that its own grid would not fit there is one grid without sizes.
        bool fits =
            GrainNodes.BeyondReach(Reach) <= most
            && medianUm / GrainNodes.BeyondReach(Reach) >= LeastMedianUm;
        isOne = sizeFactor <= Reach || !fits;
        double own = fits ? Math.Min(sizeFactor, Reach) : 1;
        gridAt = step =>
            new(pigment, resin, medianUm * Math.Exp(step * LogStep), gsd, isOne ? own : Reach, optics);
        Own = gridAt(0);
        grids[0] = new(Own);
    }

    /// <summary>About the median as it stands.</summary>
    public GrainGrid Own { get; }

    /// <inheritdoc cref="GrainGrid.Prepare"/>
    public void Prepare(Spectrum pigmentIndex, Spectrum resinIndex, double sizeFactor = 1)
    {
        var (grid, factor) = At(sizeFactor);
        grid.Prepare(pigmentIndex, resinIndex, factor);
    }

    /// <summary>Grains of other numbers; of sizes that the series does not reach, those of the nearest that it does.</summary>
    /// <inheritdoc cref="GrainGrid.At"/>
    public ClassedGrains At(
        double absorptionFactor,
        Spectrum pigmentIndex,
        Spectrum resinIndex,
        double sizeFactor = 1
    )
    {
        var (grid, factor) = At(sizeFactor);
        return grid.At(absorptionFactor, pigmentIndex, resinIndex, factor);
    }

    private (GrainGrid Grid, double Factor) At(double sizeFactor)
    {
        double factor = Math.Clamp(sizeFactor, leastFactor, mostFactor);
        if (isOne)
        {
            return (Own, factor);
        }
        // The grid about a step fits if the step itself lies within the ends.
        int step = (int)Math.Round(Math.Log(factor) / LogStep);
        int towardsOwn = -Math.Sign(step);
        while (step != 0 && Math.Exp(step * LogStep) is var at && (at < leastFactor || at > mostFactor))
        {
            step += towardsOwn;
        }
        var grid = grids.GetOrAdd(step, s => new(() => gridAt(s))).Value;
        double rest = factor / Math.Exp(step * LogStep);
        return (grid, Math.Clamp(rest, 1 / GrainNodes.BeyondReach(Reach), GrainNodes.BeyondReach(Reach)));
    }

    // Sizes go with the median: the largest of them reaches the end of the series.
    private static double LargestMedianUm(Resin resin, double gsd)
    {
        const double Any = 1;
        SizeNodes nodes = GrainSizes.ByMass(Any, gsd).Nodes(GrainTable.DefaultSizeCount);
        return Any
            * LorenzMie.LargestSizeParameter
            / GrainAverage.LargestSizeParameter(nodes, resin.RefractiveIndex.Value);
    }
}
