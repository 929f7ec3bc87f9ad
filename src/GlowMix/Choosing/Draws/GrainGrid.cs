using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// A pigment's grains in a resin for any strength of absorption, any two indices near the materials' own and any size near the
/// stated one, interpolated between Lorenz–Mie averages: a draw computes no series. Safe to use from several threads.
/// </summary>
/// <remarks>
/// By the index of grain over resin the numbers of <see cref="GrainNumbers"/> follow a cubic through four averages. Absorption and
/// size, whose part depends on the index little, multiply that by parabolas of their own in the logarithm, taken at two and at three indices. The
/// materials' own numbers give their own table, to the last digit but rounding.
/// </remarks>
internal sealed class GrainGrid
{
    /// <summary>The index node where absorption and size are turned a second time.</summary>
    private const int Aside = -3;

    /// <summary>The index node where size is turned a third time.</summary>
    private const int Beyond = 3;

    private readonly GrainNodes nodes;
    private readonly Lazy<Turns> turns;

    /// <param name="pigment">As it stands.</param>
    /// <param name="resin">As it stands.</param>
    /// <param name="medianUm">Median diameter as it stands.</param>
    /// <param name="gsd">Its spread.</param>
    /// <param name="sizeFactor">Doubt of the median as a factor; 1 where it is not drawn.</param>
    /// <param name="optics">Who has the grains as they stand.</param>
    public GrainGrid(
        Pigment pigment,
        Resin resin,
        double medianUm,
        double gsd,
        double sizeFactor,
        OpticsShelf optics
    )
    {
        nodes = new(pigment, resin, medianUm, gsd, sizeFactor, optics);
        turns = new(() =>
            new(
                Turn.Of(nodes.LogAbsorptions, OfStrength, side => nodes[0, side, 0]),
                Turn.Of(nodes.LogAbsorptions, OfStrength, side => nodes[Aside, side, 0]),
                Turn.Of(nodes.LogSizes, log => log, side => nodes[0, 0, side]),
                Turn.Of(nodes.LogSizes, log => log, side => nodes[Aside, 0, side]),
                Turn.Of(nodes.LogSizes, log => log, side => nodes[Beyond, 0, side])
            )
        );
    }

    /// <summary>Works out the averages that some grains need, so that draws on several threads do not wait for each other.</summary>
    public void Prepare(Spectrum pigmentIndex, Spectrum resinIndex, double sizeFactor = 1)
    {
        foreach (int node in nodes.Stencil(pigmentIndex, resinIndex, sizeFactor))
        {
            _ = nodes[node, 0, 0];
        }
        _ = turns.Value;
    }

    /// <summary>Grains of other numbers.</summary>
    /// <param name="absorptionFactor">On the pigment's absorption.</param>
    /// <param name="pigmentIndex">In place of the pigment's.</param>
    /// <param name="resinIndex">In place of the resin's.</param>
    /// <param name="sizeFactor">On the median diameter.</param>
    public ClassedGrains At(
        double absorptionFactor,
        Spectrum pigmentIndex,
        Spectrum resinIndex,
        double sizeFactor = 1
    )
    {
        int[] stencil = nodes.Stencil(pigmentIndex, resinIndex, sizeFactor);
        double[] offsets = [.. stencil.Select(nodes.OffsetOf)];
        double[][] line = [.. stencil.Select(n => nodes[n, 0, 0])];
        var (absorption, absorptionAside, size, sizeAside, sizeBeyond) = turns.Value;
        double[] lagNodes = [nodes.OffsetOf(Aside), 0, nodes.OffsetOf(Beyond)];
        double asideAt = nodes.OffsetOf(Aside);
        int width = GrainNumbers.PerWavelength(nodes.HighestMoment);
        var row = new double[line[0].Length];
        Span<double> weights = stackalloc double[stencil.Length];
        Span<double> byAbsorption = stackalloc double[3];
        Span<double> bySize = stackalloc double[3];
        Span<double> byLag = stackalloc double[3];
        Span<double> bySizeAlone = stackalloc double[3];
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            double offset = nodes.OffsetAt(i, pigmentIndex, resinIndex, sizeFactor);
            Lagrange.Weights(offsets, offset, weights);
            // A sphere is told by its index over the resin's and by size and absorption in units of the wavelength in the
            // resin: another resin is the same as another size and absorption. Where sizes are not drawn that small change of
            // size is left out.
            double scale = size is null ? 1 : nodes.ScaleAt(i, resinIndex);
            // What a grain shades within itself goes with absorption times size: of that, size has its own part already.
            double logSize = size is null ? 0 : Math.Log(sizeFactor * scale);
            absorption?.Weights(Math.Log(absorptionFactor / scale) + logSize, byAbsorption);
            absorption?.Weights(logSize, bySizeAlone);
            size?.Weights(logSize, bySize);
            Lagrange.Weights(lagNodes, offset, byLag);
            for (int c = 0; c < nodes.ClassCount; c++)
            {
                int from = ((c * WavelengthGrid.Count) + i) * width;
                for (int q = from; q < from + width; q++)
                {
                    double value = 0;
                    for (int n = 0; n < line.Length; n++)
                    {
                        value += weights[n] * line[n][q];
                    }
                    double own = absorption?.LogRatio(q, byAbsorption, bySizeAlone) ?? 0;
                    double other = absorptionAside?.LogRatio(q, byAbsorption, bySizeAlone) ?? 0;
                    double log = own + (offset / asideAt * (other - own));
                    if (size is not null)
                    {
                        log +=
                            (byLag[0] * sizeAside!.LogRatio(q, bySize))
                            + (byLag[1] * size.LogRatio(q, bySize))
                            + (byLag[2] * sizeBeyond!.LogRatio(q, bySize));
                    }
                    row[q] = value * Math.Exp(log) * (q == from ? absorptionFactor : scale);
                }
            }
        }
        return GrainNumbers.ToGrains(row, nodes.ClassCount, nodes.HighestMoment);
    }

    // Over this of the factor, the logarithm of what a sphere absorbs (geometrical optics, all depths of shade) is straightest.
    private static double OfStrength(double log) => 1 / (4 + Math.Exp(log));

    private sealed record Turns(
        Turn? Absorption,
        Turn? AbsorptionAside,
        Turn? Size,
        Turn? SizeAside,
        Turn? SizeBeyond
    );

    /// <summary>What another absorption, or another size, makes of the numbers: the logarithm follows a parabola.</summary>
    private sealed record Turn(Func<double, double> Along, double[] Nodes, double[][] Logs)
    {
        public static Turn? Of(double[]? logNodes, Func<double, double> along, Func<int, double[]> rowAt) =>
            logNodes is null
                ? null
                : new(
                    along,
                    [.. logNodes.Select(along)],
                    [
                        .. logNodes.Select(
                            (_, i) => Array.ConvertAll(rowAt(i - (logNodes.Length / 2)), Math.Log)
                        ),
                    ]
                );

        public void Weights(double log, Span<double> weights) => Lagrange.Weights(Nodes, Along(log), weights);

        /// <summary>Logarithm of a number over that of the materials as they stand.</summary>
        public double LogRatio(int number, ReadOnlySpan<double> weights)
        {
            double log = -Logs[Logs.Length / 2][number];
            for (int n = 0; n < Logs.Length; n++)
            {
                log += weights[n] * Logs[n][number];
            }
            return double.IsFinite(log) ? log : 0;
        }

        /// <summary>The same over what other weights make of it.</summary>
        public double LogRatio(int number, ReadOnlySpan<double> weights, ReadOnlySpan<double> over) =>
            LogRatio(number, weights) - LogRatio(number, over);
    }
}
