using System.Collections.Concurrent;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Spectra;

namespace GlowMix.Choosing.Draws;

/// <summary>
/// Lorenz–Mie averages of a pigment's grains in a resin, around the numbers of the materials as they stand: at other indices, other
/// absorption and other sizes, each worked out when it is first asked for and kept. Safe to use from several threads.
/// </summary>
internal sealed class GrainNodes
{
    /// <summary>Distance of the averages either side, in tolerances or factors of the doubt (two standard deviations).</summary>
    private const double Reach = 1.2;

    private const double LeastStep = 0.01;
    private const double MostStep = 0.03;
    private const double StepOfContrast = 0.17;
    private const int At550Nm = (550 - WavelengthGrid.FirstNm) / WavelengthGrid.StepNm;

    private readonly Pigment pigment;
    private readonly Resin resin;
    private readonly double medianUm;
    private readonly double gsd;
    private readonly double contrast;
    private readonly OpticsShelf optics;
    private readonly ConcurrentDictionary<(int Index, int Absorption, int Size), Lazy<double[]>> rows = new();

    /// <param name="pigment">As it stands.</param>
    /// <param name="resin">As it stands.</param>
    /// <param name="medianUm">Median diameter as it stands.</param>
    /// <param name="gsd">Its spread.</param>
    /// <param name="sizeFactor">Doubt of the median as a factor; 1 where it is not drawn.</param>
    /// <param name="optics">Who has the grains as they stand.</param>
    public GrainNodes(
        Pigment pigment,
        Resin resin,
        double medianUm,
        double gsd,
        double sizeFactor,
        OpticsShelf optics
    )
    {
        (this.pigment, this.resin, this.medianUm, this.gsd) = (pigment, resin, medianUm, gsd);
        this.optics = optics;
        contrast = pigment.RefractiveIndex.Value[At550Nm] - resin.RefractiveIndex.Value[At550Nm];
        LogAbsorptions = Around(Reach * Math.Log(pigment.AbsorptionPerMm.Doubt.HighOf(1)));
        LogSizes = Around(Math.Log(BeyondReach(sizeFactor)));
        var own = optics.GrainsOf(pigment, resin, medianUm, gsd);
        ClassCount = own.Classes.Length;
        HighestMoment = own.Classes[0].HighestMoment;
        rows[default] = new(GrainNumbers.Of(own));
    }

    /// <summary>Factor on the median, either way, of the averages behind a doubt of it.</summary>
    public static double BeyondReach(double sizeFactor) => Math.Pow(sizeFactor, Reach);

    public int ClassCount { get; }

    public int HighestMoment { get; }

    /// <summary>Logarithms of the factors on absorption at nodes −1, 0, 1; null where absorption is not in doubt.</summary>
    public double[]? LogAbsorptions { get; }

    /// <summary>Logarithms of the factors on the median diameter at nodes −1, 0, 1; null where sizes are not in doubt.</summary>
    public double[]? LogSizes { get; }

    /// <summary>Numbers of a node. Node 0 is the materials as they stand; absorption is per absorption of the solid.</summary>
    public double[] this[int index, int absorption, int size] =>
        rows.GetOrAdd((index, absorption, size), key => new(() => Averaged(key))).Value;

    /// <summary>
    /// How far the pigment's index would have to move, in the resin and at the size as they stand, for what crosses a grain to lag
    /// as far behind what passes it by.
    /// </summary>
    /// <remarks>
    /// The lag, size times contrast, decides how soft grains scatter (van de Hulst 1957, chapter 11); size by itself does little
    /// more than scale.
    /// </remarks>
    public double OffsetAt(int wavelength, Spectrum pigmentIndex, Spectrum resinIndex, double size)
    {
        double resinOwn = ResinIndex(wavelength);
        double scale = ScaleAt(wavelength, resinIndex);
        double contrastHere = (pigmentIndex[wavelength] / scale) - resinOwn;
        double lag = LogSizes is null ? contrastHere : size * scale * contrastHere;
        return resinOwn + lag - pigment.RefractiveIndex.Value[wavelength];
    }

    /// <summary>The index nodes around two indices: two below and two above.</summary>
    public int[] Stencil(Spectrum pigmentIndex, Spectrum resinIndex, double size)
    {
        double offset = OffsetAt(At550Nm, pigmentIndex, resinIndex, size);
        int below = 0;
        while (OffsetOf(below) > offset)
        {
            below--;
        }
        while (OffsetOf(below + 1) <= offset)
        {
            below++;
        }
        return [below - 1, below, below + 1, below + 2];
    }

    /// <summary>The pigment's index at an index node, less its own; steps are small where the contrast to the resin is.</summary>
    public double OffsetOf(int node)
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

    /// <summary>Size of the resin's wavelengths as it stands, over those in another resin.</summary>
    public double ScaleAt(int wavelength, Spectrum resinIndex) =>
        resinIndex[wavelength] / ResinIndex(wavelength);

    private double ResinIndex(int wavelength) => resin.RefractiveIndex.Value[wavelength];

    private static double[]? Around(double reach) => reach > 0 ? [-reach, 0, reach] : null;

    private double[] Averaged((int Index, int Absorption, int Size) key)
    {
        double factor = Math.Exp(LogAbsorptions?[1 + key.Absorption] ?? 0);
        double size = Math.Exp(LogSizes?[1 + key.Size] ?? 0);
        double offset = OffsetOf(key.Index);
        var moved = pigment with
        {
            RefractiveIndex = pigment.RefractiveIndex.Select(n =>
                Spectrum.FromIndex(i => ResinIndex(i) + ((n[i] + offset - ResinIndex(i)) / size))
            ),
            AbsorptionPerMm = pigment.AbsorptionPerMm.Select(a => factor * a),
        };
        double[] row = GrainNumbers.Of(
            optics.Average(moved, resin, size * medianUm, gsd, HighestMoment, everySecond: true)
        );
        int width = GrainNumbers.PerWavelength(HighestMoment);
        for (int i = 0; i < row.Length; i += width)
        {
            row[i] /= factor;
        }
        // Absorption damps resonances and follows the pigment's own spectrum: such ratios are taken as they are.
        return SmoothRatio.Of(rows[default].Value, row, width, isSmooth: key.Absorption == 0);
    }
}
