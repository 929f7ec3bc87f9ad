namespace GlowMix.Optics.Slab;

/// <summary>
/// The diffusing modes of a homogeneous medium: patterns over the directions that grow or fall with depth as one exponential
/// each. They do not depend on how deep the layer is.
/// </summary>
/// <remarks>
/// With X and Y the sum and difference of the radiances up and down, scaled by √(w μ), transfer reads X′ = −α Y,
/// Y′ = −β X in optical depth counted upwards, both matrices symmetric. With α = C Cᵀ and CᵀβC = V K² Vᵀ (symmetric
/// eigenproblem, Nakajima &amp; Tanaka 1986) the modes are X = A p, Y = −N p′ with A = C V, N = C⁻ᵀ V and p″ = K² p.
/// Forward peaks are cut by delta-M (Wiscombe 1977).
/// </remarks>
internal sealed class LayerModes
{
    private readonly int n;
    private readonly double[] alpha;
    private readonly double[] beta;
    private readonly double[] cholesky;
    private readonly SymmetricEigen eigen;
    private double[] scattered = [];

    public LayerModes(int nodes)
    {
        n = nodes;
        alpha = new double[n * n];
        beta = new double[n * n];
        cholesky = new double[n * n];
        eigen = new SymmetricEigen(n);
        Rates = new double[n];
        Coupling = new double[n];
        Sum = new double[n * n];
        Difference = new double[n * n];
        SumGram = new double[n * n];
        DifferenceGram = new double[n * n];
    }

    /// <summary>False where nothing scatters: light then runs straight, and the matrices below are not filled.</summary>
    public bool Scatters { get; private set; }

    /// <summary>Extinction after delta-M, per mm.</summary>
    public double ExtinctionPerMm { get; private set; }

    /// <summary>Absorbed share of that extinction, 0 to 1.</summary>
    public double AbsorbedShare { get; private set; }

    /// <summary>k of each mode, per unit of optical depth.</summary>
    public double[] Rates { get; }

    /// <summary>Fluence per amplitude of each mode, over 2π; also what an isotropic source feeds into it.</summary>
    public double[] Coupling { get; }

    /// <summary>Albedo × moments of the phase function after delta-M, from l = 0.</summary>
    public ReadOnlySpan<double> ScatteredMoments => scattered;

    /// <summary>A: rows are directions, columns modes.</summary>
    public double[] Sum { get; }

    /// <summary>N: rows are directions, columns modes.</summary>
    public double[] Difference { get; }

    /// <summary>AᵀA, on and above its diagonal.</summary>
    public double[] SumGram { get; }

    /// <summary>NᵀN, on and above its diagonal.</summary>
    public double[] DifferenceGram { get; }

    public void Solve(in Medium medium, StreamQuadrature quadrature)
    {
        var chi = medium.PhaseMoments.Span;
        double peak = Moment(chi, quadrature.Moments);
        double scattering = medium.ScatteringPerMm * (1 - peak);
        Scatters = scattering > 0;
        if (!Scatters)
        {
            ExtinctionPerMm = medium.AbsorptionPerMm;
            AbsorbedShare = 1;
            quadrature.InverseCosines.CopyTo(Rates, 0);
            for (int i = 0; i < n; i++)
            {
                // X = M^(-1/2) p, a direction each.
                Coupling[i] = quadrature.FluenceRoots[i] * Math.Sqrt(quadrature.InverseCosines[i]);
            }
            return;
        }

        ExtinctionPerMm = medium.AbsorptionPerMm + scattering;
        AbsorbedShare = medium.AbsorptionPerMm / ExtinctionPerMm;
        KeepMoments(chi, peak, scattering / ExtinctionPerMm, quadrature.Moments);
        Fill(alpha, quadrature.OddBasis, 1, quadrature);
        Fill(beta, quadrature.EvenBasis, 0, quadrature);
        alpha.CopyTo(cholesky, 0);
        RowMath.Cholesky(cholesky, n);
        ReduceBetween();
        eigen.Decompose(beta);
        for (int j = 0; j < n; j++)
        {
            // A conservative layer's smallest value is zero, give or take rounding.
            Rates[j] = Math.Sqrt(Math.Max(0, eigen.Values[j]));
        }

        RowMath.Transpose(Difference, eigen.VectorRows, n);
        Sum.AsSpan().Clear();
        for (int i = 0; i < n; i++)
        {
            var row = Sum.AsSpan(i * n, n);
            for (int m = 0; m <= i; m++)
            {
                RowMath.AddScaled(row, Difference.AsSpan(m * n, n), cholesky[(m * n) + i]);
            }
        }
        RowMath.SolveUpper(Difference, cholesky, n);
        RowMath.UpperGram(SumGram, Sum, n);
        RowMath.UpperGram(DifferenceGram, Difference, n);
        Coupling.AsSpan().Clear();
        for (int i = 0; i < n; i++)
        {
            RowMath.AddScaled(Coupling, Sum.AsSpan(i * n, n), quadrature.FluenceRoots[i]);
        }
        SharpenSlowestRate(quadrature);
    }

    /// <summary>
    /// The slowest mode of a nearly lossless medium has k² far below the matrix's own size, and rounding of that size in it.
    /// Energy gives it to all digits: what its net flux loses with depth is what is absorbed, k² (√(w μ) N) = absorbed share × coupling.
    /// </summary>
    private void SharpenSlowestRate(StreamQuadrature quadrature)
    {
        int slowest = 0;
        for (int j = 1; j < n; j++)
        {
            slowest = Rates[j] < Rates[slowest] ? j : slowest;
        }
        if (Rates[slowest] > 0.1)
        {
            return;
        }
        double netFlux = 0;
        for (int i = 0; i < n; i++)
        {
            netFlux += quadrature.FluxRoots[i] * Difference[(i * n) + slowest];
        }
        Rates[slowest] = Math.Sqrt(Math.Max(0, AbsorbedShare * Coupling[slowest] / netFlux));
    }

    private static double Moment(ReadOnlySpan<double> chi, int order) => order < chi.Length ? chi[order] : 0;

    /// <summary>Albedo × (χ_l − peak) / (1 − peak).</summary>
    private void KeepMoments(ReadOnlySpan<double> chi, double peak, double albedo, int count)
    {
        if (scattered.Length != count)
        {
            scattered = new double[count];
        }
        for (int l = 0; l < count; l++)
        {
            scattered[l] = albedo * (Moment(chi, l) - peak) / (1 - peak);
        }
    }

    /// <summary>1/μ on the diagonal minus Σ scattered_l e_l e_lᵀ over one parity.</summary>
    private void Fill(Span<double> matrix, double[][] basis, int first, StreamQuadrature quadrature)
    {
        matrix.Clear();
        for (int i = 0; i < n; i++)
        {
            matrix[(i * n) + i] = quadrature.InverseCosines[i];
        }
        for (int r = 0; r < basis.Length; r++)
        {
            double weight = -scattered[first + (2 * r)];
            if (weight == 0)
            {
                continue;
            }
            ReadOnlySpan<double> row = basis[r];
            for (int i = 0; i < n; i++)
            {
                RowMath.AddScaled(matrix.Slice(i * n, n), row, weight * row[i]);
            }
        }
    }

    /// <summary>beta ← Cᵀ beta C, in two passes over rows; alpha is used up as work space.</summary>
    private void ReduceBetween()
    {
        // alpha ← (Cᵀ beta)ᵀ = beta C: rows of Cᵀ begin at the diagonal.
        beta.CopyTo(alpha, 0);
        for (int i = 0; i < n; i++)
        {
            var row = beta.AsSpan(i * n, n);
            RowMath.SetScaled(row, row, cholesky[(i * n) + i]);
            for (int m = i + 1; m < n; m++)
            {
                RowMath.AddScaled(row, alpha.AsSpan(m * n, n), cholesky[(i * n) + m]);
            }
        }
        RowMath.Transpose(alpha, beta, n);
        // beta ← Cᵀ alpha
        for (int i = 0; i < n; i++)
        {
            var row = beta.AsSpan(i * n, n);
            RowMath.SetScaled(row, alpha.AsSpan(i * n, n), cholesky[(i * n) + i]);
            for (int m = i + 1; m < n; m++)
            {
                RowMath.AddScaled(row, alpha.AsSpan(m * n, n), cholesky[(i * n) + m]);
            }
        }
    }
}
