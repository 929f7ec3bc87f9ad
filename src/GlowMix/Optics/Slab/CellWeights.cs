using System.Runtime.Intrinsics;

namespace GlowMix.Optics.Slab;

/// <summary>
/// Mean fluence in the cells of a layer as two dot products with the amplitudes of <see cref="LayerLight"/>, in closed form:
/// worked out once a layer and wavelength, then read for every source.
/// </summary>
internal sealed class CellWeights(int nodes, int mostCells)
{
    private readonly double[] even = new double[nodes * mostCells];
    private readonly double[] odd = new double[nodes * mostCells];
    private readonly double[] scale = new double[nodes];
    private readonly double[] inverseRate = new double[nodes];
    private readonly double[] risingBefore = new double[nodes];
    private readonly double[] fallingBefore = new double[nodes];

    /// <summary>Prepares the cells of a scattering layer.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="edgesMm">Heights above its lower face, rising, one more than cells.</param>
    public void Prepare(LayerOperators layer, ReadOnlySpan<double> edgesMm)
    {
        var modes = layer.Modes;
        double depth = layer.OpticalDepth;
        bool thin = false;
        for (int j = 0; j < nodes; j++)
        {
            double k = modes.Rates[j];
            bool isThin = k * depth < LayerOperators.ThinRate;
            thin |= isThin;
            scale[j] = isThin ? 0 : Math.Tau * modes.Coupling[j] / (1 + Math.Exp(-k * depth));
            inverseRate[j] = isThin ? 0 : 1 / k;
        }
        for (int edge = 0; edge < edgesMm.Length; edge++)
        {
            double t = modes.ExtinctionPerMm * edgesMm[edge];
            double width = edge > 0 ? t - (modes.ExtinctionPerMm * edgesMm[edge - 1]) : 1;
            int row = (edge - 1) * nodes;
            for (int j = 0; j < nodes; j += 4)
            {
                var k = Load(modes.Rates, j);
                var rising = Exponential.Of(k * Vector256.Create(t - depth));
                var falling = Exponential.Of(k * Vector256.Create(-t));
                if (edge > 0)
                {
                    var fromAbove = rising - Load(risingBefore, j);
                    var fromBelow = Load(fallingBefore, j) - falling;
                    var rate = Load(inverseRate, j);
                    var share = Load(scale, j) * rate / Vector256.Create(width);
                    Store(even, row + j, share * (fromAbove + fromBelow));
                    Store(odd, row + j, share * rate * (fromAbove - fromBelow));
                }
                Store(risingBefore, j, rising);
                Store(fallingBefore, j, falling);
            }
        }
        if (thin)
        {
            FillThinModes(layer, edgesMm);
        }
    }

    /// <summary>Mean fluence of a source's light in a cell; never below zero.</summary>
    public double Mean(LayerLight light, int cell) => Math.Max(0, MeanWithOwn(light, cell));

    /// <summary>The same for the light of a cell source, which in its own layer is only part of the fluence and may be negative.</summary>
    public double MeanWithOwn(LayerLight light, int cell) =>
        RowMath.Dot(light.Even, even.AsSpan(cell * nodes, nodes))
        + RowMath.Dot(light.Odd, odd.AsSpan(cell * nodes, nodes));

    /// <summary>Modes that hardly change over the layer, as polynomials: their exponentials would cancel.</summary>
    private void FillThinModes(LayerOperators layer, ReadOnlySpan<double> edgesMm)
    {
        var modes = layer.Modes;
        for (int j = 0; j < nodes; j++)
        {
            double k = modes.Rates[j];
            if (scale[j] != 0)
            {
                continue;
            }
            double coupling = Math.Tau * modes.Coupling[j] / Math.Cosh(k * layer.OpticalDepth / 2);
            for (int cell = 0; cell < edgesMm.Length - 1; cell++)
            {
                double half = k * modes.ExtinctionPerMm * (edgesMm[cell + 1] - edgesMm[cell]) / 2;
                double middle = modes.ExtinctionPerMm * (edgesMm[cell] + edgesMm[cell + 1]) / 2;
                var (cosh, sinhOverRate) = LayerOperators.ThinMode(k, middle - (layer.OpticalDepth / 2));
                double spread = LayerOperators.ThinMode(half, 1).SinhOverRate;
                even[(cell * nodes) + j] = coupling * spread * cosh;
                odd[(cell * nodes) + j] = coupling * spread * sinhOverRate;
            }
        }
    }

    private static Vector256<double> Load(double[] values, int from) =>
        Vector256.LoadUnsafe(ref values[from]);

    private static void Store(double[] values, int from, Vector256<double> value) =>
        value.StoreUnsafe(ref values[from]);
}
