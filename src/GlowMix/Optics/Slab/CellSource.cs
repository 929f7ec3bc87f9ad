namespace GlowMix.Optics.Slab;

/// <summary>A cell between two heights of a scattering layer that sends out one unit of light evenly in all directions.</summary>
/// <remarks>
/// Spread over a cell and not a plane: the fluence at an isotropic plane itself has no bound. The cell's own field is Green's
/// function of p″ = k² p with p = 0 at both faces, which stays bounded when k goes to zero. Holding p at zero takes light
/// that enters through the faces; <see cref="Emit"/> gives that part, with the sign turned, as light still to be added.
/// </remarks>
internal static class CellSource
{
    private const double SmallRate = 1e-6;

    /// <summary>Light through the faces, in √(w μ) scale, that goes with the source's own field.</summary>
    public static void Emit(
        LayerOperators layer,
        StreamQuadrature quadrature,
        double fromMm,
        double toMm,
        Span<double> top,
        Span<double> bottom
    )
    {
        var modes = layer.Modes;
        int n = quadrature.Count;
        double low = modes.ExtinctionPerMm * fromMm;
        double high = modes.ExtinctionPerMm * toMm;
        double depth = layer.OpticalDepth;
        Span<double> upper = stackalloc double[n];
        Span<double> lower = stackalloc double[n];
        for (int j = 0; j < n; j++)
        {
            double strength = modes.Coupling[j] / (4 * Math.PI);
            upper[j] = strength * MeanSinhRatio(modes.Rates[j], low, high, depth);
            lower[j] = strength * MeanSinhRatio(modes.Rates[j], depth - high, depth - low, depth);
        }
        RowMath.Multiply(top, modes.Difference, upper);
        RowMath.Multiply(bottom, modes.Difference, lower);
    }

    /// <summary>Mean fluence in each cell of a layer from each cell's own field.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="edgesMm">Heights of the cells' edges, from the lower face to the upper, one more than cells.</param>
    /// <param name="result">Added to: row = source cell, column = cell where it is met.</param>
    /// <param name="stride">Length of a row of the result.</param>
    public static void AddOwnFluence(
        LayerOperators layer,
        ReadOnlySpan<double> edgesMm,
        Span<double> result,
        int stride
    )
    {
        var modes = layer.Modes;
        int cells = edgesMm.Length - 1;
        double depth = layer.OpticalDepth;
        double extinction = modes.ExtinctionPerMm;
        Span<double> below = stackalloc double[cells];
        Span<double> above = stackalloc double[cells];
        for (int j = 0; j < modes.Rates.Length; j++)
        {
            double k = modes.Rates[j];
            double coupling = modes.Coupling[j] * modes.Coupling[j];
            double sinhOverRate = k * depth < SmallRate ? depth : Math.Sinh(k * depth) / k;
            bool facesMatter = k * depth < 300;
            for (int a = 0; a < cells; a++)
            {
                double low = extinction * edgesMm[a];
                double high = extinction * edgesMm[a + 1];
                below[a] = MeanSinhRatio(k, low, high, depth);
                above[a] = MeanSinhRatio(k, depth - high, depth - low, depth);
            }
            for (int a = 0; a < cells; a++)
            {
                double width = extinction * (edgesMm[a + 1] - edgesMm[a]);
                double elsewhere = 0;
                for (int b = 0; b < cells; b++)
                {
                    if (b == a)
                    {
                        continue;
                    }
                    // sinh(k low) sinh(k high) / (k sinh(k depth)), both as means over their cell.
                    double green = facesMatter
                        ? below[Math.Min(a, b)] * above[Math.Max(a, b)] * sinhOverRate
                        : FarFromFaces(k * extinction, edgesMm, Math.Min(a, b), Math.Max(a, b)) / k;
                    result[(a * stride) + b] += coupling * green;
                    elsewhere += k * k * extinction * (edgesMm[b + 1] - edgesMm[b]) * green;
                }
                double middle = extinction * (edgesMm[a] + edgesMm[a + 1]) / 2;
                // What a mode keeps inside, summed over the cells, and what it sends out make up the source; the own cell is
                // the rest. For a slow mode that would cancel, and its Green's function is the straight line of k = 0.
                double own =
                    k * depth < 0.1
                        ? middle - (width / 6) - (middle * middle / depth)
                        : (1 - below[a] - above[a] - elsewhere) / (k * k * width);
                result[(a * stride) + a] += coupling * own;
            }
        }
    }

    /// <summary>exp(−k distance) / 2 as the mean over two cells: layers so deep that their faces do not matter to the mode.</summary>
    private static double FarFromFaces(double ratePerMm, ReadOnlySpan<double> edgesMm, int lower, int upper)
    {
        double lowWidth = ratePerMm * (edgesMm[lower + 1] - edgesMm[lower]);
        double highWidth = ratePerMm * (edgesMm[upper + 1] - edgesMm[upper]);
        double gap = ratePerMm * (edgesMm[upper] - edgesMm[lower + 1]);
        return Math.Exp(-gap)
            * LayerOperators.Expm1Of(-lowWidth)
            * LayerOperators.Expm1Of(-highWidth)
            / (lowWidth * highWidth * 2);
    }

    /// <summary>Mean of sinh(k t) over low to high, over sinh(k depth).</summary>
    private static double MeanSinhRatio(double k, double low, double high, double depth)
    {
        if (!(depth > 0))
        {
            return 0;
        }
        double half = k * (high - low) / 2;
        double middle = (high + low) / 2;
        double spread = half < 1e-4 ? 1 + (half * half / 6) : Math.Sinh(Math.Min(half, 350)) / half;
        if (k * depth < SmallRate)
        {
            return middle / depth;
        }
        if (half > 300)
        {
            // One cell holds hundreds of decay lengths: only its upper edge counts.
            return Math.Exp(-k * (depth - high)) / (2 * half);
        }
        return Math.Exp(-k * (depth - middle))
            * LayerOperators.Expm1Of(-2 * k * middle)
            / LayerOperators.Expm1Of(-2 * k * depth)
            * spread;
    }
}
