using System.Runtime.Intrinsics;
using GlowMix.Materials;
using GlowMix.Optics.Slab;
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
        Turn[] all = [.. new[] { absorption, absorptionAside, sizeAside, size, sizeBeyond }.OfType<Turn>()];
        double[][] turned = [.. all.SelectMany(t => t.LogRatios)];
        double[] lagNodes = [nodes.OffsetOf(Aside), 0, nodes.OffsetOf(Beyond)];
        double asideAt = nodes.OffsetOf(Aside);
        int width = GrainNumbers.PerWavelength(nodes.HighestMoment);
        var row = new double[line[0].Length];
        Span<double> weights = stackalloc double[stencil.Length];
        Span<double> byAbsorption = stackalloc double[Turn.Sides];
        Span<double> bySizeAlone = stackalloc double[Turn.Sides];
        Span<double> bySize = stackalloc double[Turn.Sides];
        Span<double> byLag = stackalloc double[lagNodes.Length];
        Span<double> byTurn = stackalloc double[turned.Length];
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
            int turn = 0;
            if (absorption is not null)
            {
                absorption.Weights(Math.Log(absorptionFactor / scale) + logSize, byAbsorption);
                absorption.Weights(logSize, bySizeAlone);
                double aside = offset / asideAt;
                foreach (double share in (ReadOnlySpan<double>)[1 - aside, aside])
                {
                    for (int side = 0; side < Turn.Sides; side++)
                    {
                        byTurn[turn++] = share * (byAbsorption[side] - bySizeAlone[side]);
                    }
                }
            }
            if (size is not null)
            {
                size.Weights(logSize, bySize);
                Lagrange.Weights(lagNodes, offset, byLag);
                foreach (double share in byLag)
                {
                    for (int side = 0; side < Turn.Sides; side++)
                    {
                        byTurn[turn++] = share * bySize[side];
                    }
                }
            }
            for (int c = 0; c < nodes.ClassCount; c++)
            {
                int from = ((c * WavelengthGrid.Count) + i) * width;
                var numbers = row.AsSpan(from, width);
                Turned(numbers, from, line, weights, turned, byTurn);
                numbers[0] *= absorptionFactor;
                for (int q = 1; q < numbers.Length; q++)
                {
                    numbers[q] *= scale;
                }
            }
        }
        return GrainNumbers.ToGrains(row, nodes.ClassCount, nodes.HighestMoment);
    }

    /// <summary>numbers ← Σ weight × row, times the exponential of Σ weight × logarithm of a turn.</summary>
    private static void Turned(
        Span<double> numbers,
        int from,
        double[][] line,
        ReadOnlySpan<double> weights,
        double[][] turned,
        ReadOnlySpan<double> byTurn
    )
    {
        int four = Vector256<double>.Count;
        for (int q = 0; q < numbers.Length; q += four)
        {
            // The last four overlap with those before.
            int at = Math.Min(q, numbers.Length - four);
            var value = Vector256<double>.Zero;
            for (int n = 0; n < line.Length; n++)
            {
                value += weights[n] * Vector256.Create<double>(line[n].AsSpan(from + at, four));
            }
            var log = Vector256<double>.Zero;
            for (int n = 0; n < turned.Length; n++)
            {
                log += byTurn[n] * Vector256.Create<double>(turned[n].AsSpan(from + at, four));
            }
            (value * Exponential.Of(log)).CopyTo(numbers[at..]);
        }
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
    private sealed class Turn
    {
        /// <summary>Nodes beside the materials as they stand, one below and one above.</summary>
        public const int Sides = 2;

        private readonly Func<double, double> along;
        private readonly double[] nodes;

        private Turn(double[] logNodes, Func<double, double> along, Func<int, double[]> rowAt)
        {
            this.along = along;
            nodes = [.. logNodes.Select(along)];
            double[] own = rowAt(0);
            LogRatios = [RatiosOf(rowAt(-1)), RatiosOf(rowAt(1))];

            // Where a number is nothing it stays as it is.
            double[] RatiosOf(double[] other) =>
                [.. other.Zip(own, (o, number) => o > 0 && number > 0 ? Math.Log(o / number) : 0)];
        }

        /// <summary>Logarithms of the numbers at either node over those of the materials as they stand.</summary>
        public double[][] LogRatios { get; }

        public static Turn? Of(double[]? logNodes, Func<double, double> along, Func<int, double[]> rowAt) =>
            logNodes is null ? null : new(logNodes, along, rowAt);

        /// <summary>Weights of <see cref="LogRatios"/> in the parabola at a logarithm.</summary>
        public void Weights(double log, Span<double> sides)
        {
            Span<double> all = stackalloc double[nodes.Length];
            Lagrange.Weights(nodes, along(log), all);
            (sides[0], sides[1]) = (all[0], all[^1]);
        }
    }
}
