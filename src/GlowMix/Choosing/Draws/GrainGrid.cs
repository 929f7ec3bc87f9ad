using System.Collections.Concurrent;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// A pigment's grains in a resin for any strength of absorption, any two indices near the materials' own and any size near the
/// stated one, interpolated between Lorenz–Mie averages: a draw computes no series. Safe to use from several threads.
/// </summary>
/// <remarks>
/// By the index of grain over resin the cross-sections and moments follow a parabola through three averages. Absorption and
/// size, which hardly depend on the index, multiply that by a parabola of their own over the logarithm, taken at the materials'
/// own indices. The materials' own numbers give their own table, to the last digit but rounding. Where grain and resin match,
/// everything has a kink there: straight lines between two averages.
/// </remarks>
internal sealed class GrainGrid
{
    /// <summary>Distance of the averages either side, in tolerances or factors of the doubt (two standard deviations).</summary>
    private const double Reach = 1.2;

    private const double LeastStep = 0.02;
    private const double MostStep = 0.05;
    private const double StepOfContrast = 0.3;
    private const int At550Nm = (550 - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;

    private readonly Pigment pigment;
    private readonly Resin resin;
    private readonly double medianUm;
    private readonly double gsd;
    private readonly double contrast;
    private readonly double[] logAbsorptions;
    private readonly double[]? logSizes;
    private readonly ConcurrentDictionary<(int Index, int Absorption, int Size), Lazy<double[]>> nodes =
        new();
    private readonly int classes;
    private readonly int highestMoment;

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
        IOptics optics
    )
    {
        (this.pigment, this.resin, this.medianUm, this.gsd) = (pigment, resin, medianUm, gsd);
        contrast = pigment.RefractiveIndex.Value[At550Nm] - resin.RefractiveIndex.Value[At550Nm];
        double absorption = Reach * Math.Log(pigment.AbsorptionPerMm.Doubt.HighOf(1));
        logAbsorptions = [-absorption, 0, absorption];
        double size = Reach * Math.Log(sizeFactor);
        logSizes = size > 0 ? [-size, 0, size] : null;
        var own = optics.GrainsOf(pigment, resin, medianUm, gsd);
        classes = own.Classes.Length;
        highestMoment = own.Classes[0].HighestMoment;
        nodes[default] = new(GrainNumbers.Of(own));
    }

    /// <summary>Works out the averages that some grains need, so that draws on several threads do not wait for each other.</summary>
    public void Prepare(Spectrum pigmentIndex, Spectrum resinIndex)
    {
        foreach (int node in Stencil(OffsetAt(At550Nm, pigmentIndex, resinIndex)))
        {
            _ = Node(node, 0, 0);
        }
        if (logAbsorptions[2] > 0)
        {
            _ = Node(0, -1, 0);
            _ = Node(0, 1, 0);
        }
        if (logSizes is not null)
        {
            _ = Node(0, 0, -1);
            _ = Node(0, 0, 1);
        }
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
        int[] stencil = Stencil(OffsetAt(At550Nm, pigmentIndex, resinIndex));
        double[] offsets = [.. stencil.Select(OffsetOf)];
        double[][] line = [.. stencil.Select(n => Node(n, 0, 0))];
        double[] own = Node(0, 0, 0);
        int width = GrainNumbers.PerWavelength(highestMoment);
        var row = new double[own.Length];
        Span<double> weights = stackalloc double[3];
        Span<double> byAbsorption = stackalloc double[3];
        Span<double> bySize = stackalloc double[3];
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Lagrange.Weights(offsets, OffsetAt(i, pigmentIndex, resinIndex), weights);
            // A sphere is told by its index over the resin's and by size and absorption in units of the wavelength in the
            // resin: another resin is the same as another size and absorption. Where sizes are not drawn that small change of
            // size is left out.
            double scale = logSizes is null ? 1 : resinIndex[i] / resin.RefractiveIndex.Value[i];
            Side(logAbsorptions, Math.Log(absorptionFactor / scale), byAbsorption);
            Side(logSizes, Math.Log(sizeFactor * scale), bySize);
            for (int c = 0; c < classes; c++)
            {
                int from = ((c * WavelengthGrid.Count) + i) * width;
                for (int q = from; q < from + width; q++)
                {
                    double value = 0;
                    for (int n = 0; n < line.Length; n++)
                    {
                        value += weights[n] * line[n][q];
                    }
                    row[q] = value;
                }
                Multiply(row, own, from, width, byAbsorption, logAbsorptions, (0, 1, 0));
                Multiply(row, own, from, width, bySize, logSizes, (0, 0, 1));
                row[from] *= scale;
                row[from + 1] *= scale;
            }
        }
        return GrainNumbers.ToGrains(row, classes, highestMoment);
    }

    private static void Side(double[]? logNodes, double at, Span<double> weights)
    {
        if (logNodes is not null && logNodes[2] > 0)
        {
            Lagrange.Weights(logNodes, at, weights);
        }
    }

    private void Multiply(
        double[] row,
        double[] own,
        int from,
        int width,
        ReadOnlySpan<double> weights,
        double[]? logNodes,
        (int Index, int Absorption, int Size) up
    )
    {
        if (logNodes is null || logNodes[2] == 0)
        {
            return;
        }
        double[] low = Node(-up.Index, -up.Absorption, -up.Size);
        double[] high = Node(up.Index, up.Absorption, up.Size);
        for (int q = from; q < from + width; q++)
        {
            if (own[q] > 0)
            {
                row[q] *= ((weights[0] * low[q]) + (weights[1] * own[q]) + (weights[2] * high[q])) / own[q];
            }
        }
    }

    /// <summary>How far the pigment's index would have to move in the resin as it stands, for grain over resin to be the same.</summary>
    private double OffsetAt(int wavelength, Spectrum pigmentIndex, Spectrum resinIndex) =>
        (pigmentIndex[wavelength] * resin.RefractiveIndex.Value[wavelength] / resinIndex[wavelength])
        - pigment.RefractiveIndex.Value[wavelength];

    /// <summary>The nodes around an offset: three, or the two next to it where grain and resin come to match between three.</summary>
    private int[] Stencil(double offset)
    {
        int below = 0;
        while (OffsetOf(below) > offset)
        {
            below--;
        }
        while (OffsetOf(below + 1) <= offset)
        {
            below++;
        }
        int nearest = offset - OffsetOf(below) < OffsetOf(below + 1) - offset ? below : below + 1;
        int[] three = [nearest - 1, nearest, nearest + 1];
        return three.All(n => (contrast + OffsetOf(n) > 0) == (contrast + OffsetOf(nearest) > 0))
            ? three
            : [below, below + 1];
    }

    // 0 is the pigment's own index; steps are small where the contrast is.
    private double OffsetOf(int node)
    {
        double offset = 0;
        for (int n = 0; n != node; n += Math.Sign(node))
        {
            offset +=
                Math.Sign(node)
                * Math.Clamp(StepOfContrast * Math.Abs(contrast + offset), LeastStep, MostStep);
        }
        return offset;
    }

    private double[] Node(int index, int absorption, int size) =>
        nodes.GetOrAdd((index, absorption, size), key => new(() => Averaged(key))).Value;

    private double[] Averaged((int Index, int Absorption, int Size) key)
    {
        double offset = OffsetOf(key.Index);
        double factor = Math.Exp(logAbsorptions[1 + key.Absorption]);
        var moved = pigment with
        {
            RefractiveIndex = pigment.RefractiveIndex.Select(n => n.Select((double x) => x + offset)),
            AbsorptionPerMm = pigment.AbsorptionPerMm.Select(a => factor * a),
        };
        double median = medianUm * Math.Exp(logSizes?[1 + key.Size] ?? 0);
        return GrainNumbers.Of(OpticsShelf.Average(moved, resin, median, gsd, highestMoment));
    }
}
