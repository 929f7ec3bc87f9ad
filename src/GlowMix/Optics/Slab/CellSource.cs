using MathNet.Numerics.Integration;

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
    private const double MostOfSeries = 0.5;

    /// <summary>In decay lengths of a mode; four Gauss points are good to the last digits up to it.</summary>
    private const double NarrowCell = 0.3;

    private static readonly double[] FourPoints = new GaussLegendreRule(0, 1, 4).Abscissas;
    private static readonly double[] FourWeights = new GaussLegendreRule(0, 1, 4).Weights;

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
            double k = modes.Rates[j];
            double lost = Lost(2 * k * depth);
            double strength = modes.Coupling[j] / (4 * Math.PI);
            upper[j] = strength * MeanSinhRatio(k, low, high, depth, lost);
            lower[j] = strength * MeanSinhRatio(k, depth - high, depth - low, depth, lost);
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
        if (!(depth > 0))
        {
            return;
        }
        Span<double> spread = stackalloc double[cells];
        Span<double> fromBottom = stackalloc double[cells];
        Span<double> fromTop = stackalloc double[cells];
        for (int j = 0; j < modes.Rates.Length; j++)
        {
            // Slower than this a mode is a straight line to the last digits.
            double k = Math.Max(modes.Rates[j], 1e-7 / depth);
            double coupling = modes.Coupling[j] * modes.Coupling[j];
            double whole = Lost(2 * k * depth);
            for (int a = 0; a < cells; a++)
            {
                double width = k * extinction * (edgesMm[a + 1] - edgesMm[a]);
                double middle = extinction * (edgesMm[a] + edgesMm[a + 1]) / 2;
                spread[a] = Lost(width) / width;
                fromBottom[a] = Lost(2 * k * middle);
                fromTop[a] = Lost(2 * k * (depth - middle));
            }
            for (int a = 0; a < cells; a++)
            {
                double low = extinction * edgesMm[a];
                double high = extinction * edgesMm[a + 1];
                result[(a * stride) + a] +=
                    coupling
                    * (
                        k * (high - low) < NarrowCell
                            ? OwnMeanOfNarrowCell(k, low, high, depth)
                            : OwnMean(k, low, high, depth, spread[a], fromBottom[a], fromTop[a])
                    );
                for (int b = a + 1; b < cells; b++)
                {
                    // Mean of sinh(k t) sinh(k (depth − t′)) / (k sinh(k depth)) over both cells.
                    double gap = k * extinction * (edgesMm[b] - edgesMm[a + 1]);
                    double green =
                        Math.Exp(-gap) * spread[a] * spread[b] * fromBottom[a] * fromTop[b] / (2 * k * whole);
                    result[(a * stride) + b] += coupling * green;
                    result[(b * stride) + a] += coupling * green;
                }
            }
        }
    }

    /// <summary>Mean of Green's function over a cell with itself.</summary>
    private static double OwnMean(
        double k,
        double low,
        double high,
        double depth,
        double spread,
        double fromBottom,
        double fromTop
    )
    {
        double outside =
            ((1 + Math.Exp(-2 * k * low)) * fromTop) + ((1 + Math.Exp(-2 * k * (depth - high))) * fromBottom);
        return (1 - (spread * outside / (2 * Lost(2 * k * depth)))) / (k * k * (high - low));
    }

    /// <summary>
    /// The same where the difference in <see cref="OwnMean"/> would cancel: (2/w²) ∫ sinh(k (depth − t)) (cosh(k t) − cosh(k low))
    /// dt / (k² sinh(k depth)), the difference of cosh as a product, so that all terms are positive; by four Gauss points.
    /// </summary>
    private static double OwnMeanOfNarrowCell(double k, double low, double high, double depth)
    {
        double width = high - low;
        double sum = 0;
        for (int i = 0; i < FourPoints.Length; i++)
        {
            double within = width * FourPoints[i];
            double t = low + within;
            sum += FourWeights[i] * Lost(2 * k * (depth - t)) * Lost(k * (t + low)) * Lost(k * within);
        }
        return sum / (k * k * width * Lost(2 * k * depth));
    }

    /// <summary>1 − exp(−x).</summary>
    private static double Lost(double x) => -LayerOperators.Expm1Of(-x);

    /// <summary>Mean of sinh(k t) over low to high, over sinh(k depth), of which the whole depth's part is worked out already.</summary>
    private static double MeanSinhRatio(double k, double low, double high, double depth, double lostInDepth)
    {
        double middle = (high + low) / 2;
        if (k * depth < SmallRate)
        {
            return depth > 0 ? middle / depth : 0;
        }
        double half = k * (high - low) / 2;
        double fromFace = Lost(2 * k * middle) / lostInDepth;
        return half > MostOfSeries
            ? Math.Exp(-k * (depth - high)) * fromFace * Lost(2 * half) / (2 * half)
            : Math.Exp(-k * (depth - middle)) * fromFace * SinhOverItself(half);
    }

    /// <summary>sinh(x) / x as a series, to the last digits up to <see cref="MostOfSeries"/>.</summary>
    private static double SinhOverItself(double x)
    {
        double sum = 1;
        foreach (double steps in (ReadOnlySpan<double>)[12 * 13, 10 * 11, 8 * 9, 6 * 7, 4 * 5, 2 * 3])
        {
            sum = 1 + (x * x / steps * sum);
        }
        return sum;
    }
}
