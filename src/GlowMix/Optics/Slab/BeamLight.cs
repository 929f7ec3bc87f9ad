namespace GlowMix.Optics.Slab;

/// <summary>A collimated beam inside one layer, and the field of the light it feeds there.</summary>
/// <remarks>
/// In the modes of the layer the beam drives p″ − k² p = B E with E = exp(−s/μ₀), s the optical depth below the upper face.
/// Taken is the answer with p = 0 at that face, p = B (E − exp(−k s)) / (1/μ₀² − k²): bounded everywhere, and its limit where a
/// mode falls off as the beam does is found without a difference of large numbers. The beam itself keeps the forward peak
/// that delta-M cuts off.
/// </remarks>
internal sealed class BeamLight
{
    private readonly LayerOperators layer;
    private readonly double inverseCosine;
    private readonly double irradiance;
    private readonly double[] strengths;

    /// <param name="layer">The layer.</param>
    /// <param name="quadrature">Its directions.</param>
    /// <param name="cosine">Cosine of the beam inside.</param>
    /// <param name="fluxAtTop">Flux on unit horizontal area that reaches the upper face.</param>
    /// <param name="emission">Written: what the field sends out through the faces.</param>
    public BeamLight(
        LayerOperators layer,
        StreamQuadrature quadrature,
        double cosine,
        double fluxAtTop,
        LayerEmission emission
    )
    {
        this.layer = layer;
        inverseCosine = 1 / cosine;
        irradiance = fluxAtTop / cosine;
        FluxAtBottom = fluxAtTop * Math.Exp(-layer.OpticalDepth * inverseCosine);
        var modes = layer.Modes;
        int n = quadrature.Count;
        strengths = new double[n];
        emission.Emits = modes.Scatters;
        if (!modes.Scatters)
        {
            return;
        }

        var odd = new double[n];
        var even = new double[n];
        Scatter(modes, quadrature, cosine, even, odd);
        var oddInModes = Project(modes.Difference, odd);
        var evenInModes = Project(modes.Sum, even);
        var slope = new double[n];
        for (int j = 0; j < n; j++)
        {
            double drive = (oddInModes[j] * inverseCosine) - evenInModes[j];
            strengths[j] = drive / (inverseCosine + modes.Rates[j]);
            slope[j] = oddInModes[j] - strengths[j];
        }
        // Upper face: X = 0, Y = −N (p′ − Nᵀ s).
        RowMath.Multiply(emission.Up, modes.Difference, slope);
        RowMath.SetScaled(emission.Up, emission.Up, 0.5);
        emission.Up.CopyTo(emission.HeldTop, 0);

        // Lower face.
        double beam = Math.Exp(-layer.OpticalDepth * inverseCosine);
        var value = new double[n];
        for (int j = 0; j < n; j++)
        {
            value[j] = strengths[j] * Lag(modes.Rates[j], layer.OpticalDepth);
            slope[j] = ((oddInModes[j] - strengths[j]) * beam) - (modes.Rates[j] * value[j]);
        }
        var sum = new double[n];
        var difference = new double[n];
        RowMath.Multiply(sum, modes.Sum, value);
        RowMath.Multiply(difference, modes.Difference, slope);
        for (int i = 0; i < n; i++)
        {
            emission.Down[i] = (sum[i] - difference[i]) / 2;
            emission.HeldBottom[i] = -(sum[i] + difference[i]) / 2;
        }
        emission.AddAnswerToHeld(layer);
    }

    /// <summary>Flux of the beam on unit horizontal area at the lower face.</summary>
    public double FluxAtBottom { get; }

    /// <summary>Fluence of the beam and of its field at a height above the lower face.</summary>
    public double Fluence(double heightMm)
    {
        var modes = layer.Modes;
        double below = Math.Max(0, layer.OpticalDepth - (modes.ExtinctionPerMm * heightMm));
        double field = 0;
        for (int j = 0; modes.Scatters && j < strengths.Length; j++)
        {
            field += modes.Coupling[j] * strengths[j] * Lag(modes.Rates[j], below);
        }
        return (irradiance * Math.Exp(-below * inverseCosine)) + (Math.Tau * field);
    }

    /// <summary>Flux of the beam and of its field absorbed in the layer.</summary>
    public double Absorbed()
    {
        var modes = layer.Modes;
        double field = 0;
        for (int j = 0; modes.Scatters && j < strengths.Length; j++)
        {
            field += modes.Coupling[j] * strengths[j] * MeanLag(modes.Rates[j]);
        }
        double beam = irradiance * MeanFalling(inverseCosine);
        return modes.AbsorbedShare * layer.OpticalDepth * (beam + (Math.Tau * field));
    }

    /// <summary>(exp(−s/μ₀) − exp(−k s)) / (1/μ₀ − k).</summary>
    private double Lag(double rate, double s)
    {
        double gap = inverseCosine - rate;
        double x = gap * s;
        if (Math.Abs(x) > 1)
        {
            return (Math.Exp(-inverseCosine * s) - Math.Exp(-rate * s)) / gap;
        }
        return s * Math.Exp(-rate * s) * (x == 0 ? -1 : LayerOperators.Expm1Of(-x) / x);
    }

    /// <summary>Mean of <see cref="Lag"/> over the layer.</summary>
    private double MeanLag(double rate)
    {
        double gap = inverseCosine - rate;
        double depth = layer.OpticalDepth;
        if (Math.Abs(gap) * depth > 0.01)
        {
            return (MeanFalling(inverseCosine) - MeanFalling(rate)) / gap;
        }
        // The slope of MeanFalling between the two, by two Gauss points: 1e-11 of it at this width.
        double middle = (inverseCosine + rate) / 2;
        double aside = gap / (2 * Math.Sqrt(3));
        return -depth * (MeanRamp((middle + aside) * depth) + MeanRamp((middle - aside) * depth)) / 2;
    }

    /// <summary>Mean of exp(−rate s) over the layer.</summary>
    private double MeanFalling(double rate)
    {
        double x = rate * layer.OpticalDepth;
        return x < 1e-300 ? 1 : -LayerOperators.Expm1Of(-x) / x;
    }

    /// <summary>∫₀¹ y exp(−x y) dy.</summary>
    private static double MeanRamp(double x)
    {
        if (x > 0.5)
        {
            return (1 - (Math.Exp(-x) * (1 + x))) / (x * x);
        }
        double sum = 0;
        double power = 1;
        for (int m = 0; m < 14; m++)
        {
            sum += power / (m + 2);
            power *= -x / (m + 1);
        }
        return sum;
    }

    /// <summary>
    /// What the beam at the upper face is scattered into, over √μ: the part that is the same upwards and downwards, and the
    /// upward excess.
    /// </summary>
    /// <remarks>
    /// On the nodes' side the same orthonormal rows as in the modes, so that no light is lost or made; on the beam's side the
    /// true polynomials √(2l+1) P_l(μ₀). (The rows' own polynomials, continued to μ₀, swing beyond all bounds between nodes.)
    /// </remarks>
    private void Scatter(
        LayerModes modes,
        StreamQuadrature quadrature,
        double cosine,
        double[] even,
        double[] odd
    )
    {
        var moments = modes.ScatteredMoments;
        double perSteradian = irradiance / Math.Tau;
        double before = 0;
        double legendre = 1;
        for (int l = 0; l < moments.Length; l++)
        {
            double scale = moments[l] * Math.Sqrt((2 * l) + 1) * legendre * perSteradian;
            if (l % 2 == 0)
            {
                // The constant row is 1 / √Σw on every node.
                double norm = l == 0 ? 1 / Math.Sqrt(quadrature.Weights.Sum()) : 1;
                RowMath.AddScaled(even, quadrature.EvenBasis[l / 2], scale * norm);
            }
            else
            {
                // The beam travels downwards.
                RowMath.AddScaled(odd, quadrature.OddBasis[l / 2], -scale);
            }
            (before, legendre) = (legendre, ((((2 * l) + 1) * cosine * legendre) - (l * before)) / (l + 1));
        }
    }

    private static double[] Project(double[] modes, double[] vector)
    {
        int n = vector.Length;
        var result = new double[n];
        for (int i = 0; i < n; i++)
        {
            RowMath.AddScaled(result, modes.AsSpan(i * n, n), vector[i]);
        }
        return result;
    }
}
