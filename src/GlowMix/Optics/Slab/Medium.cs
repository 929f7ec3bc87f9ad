namespace GlowMix.Optics.Slab;

/// <summary>What light of one wavelength meets in a homogeneous layer.</summary>
/// <param name="AbsorptionPerMm">Absorption coefficient, 0 or more.</param>
/// <param name="ScatteringPerMm">Scattering coefficient, 0 or more.</param>
/// <param name="PhaseMoments">
/// Legendre moments χ₀ = 1, χ₁ = g, … of the phase function; needed up to the quadrature's <see cref="StreamQuadrature.Moments"/>,
/// the ones left out count as zero. May be empty where nothing scatters.
/// </param>
public readonly record struct Medium(
    double AbsorptionPerMm,
    double ScatteringPerMm,
    ReadOnlyMemory<double> PhaseMoments
)
{
    /// <summary>A medium that does not scatter.</summary>
    public static Medium Clear(double absorptionPerMm) =>
        new(absorptionPerMm, 0, ReadOnlyMemory<double>.Empty);

    /// <summary>
    /// A medium with the moments g^l of Henyey &amp; Greenstein, 1941.
    /// </summary>
    /// <param name="absorptionPerMm">Absorption coefficient.</param>
    /// <param name="scatteringPerMm">Scattering coefficient.</param>
    /// <param name="asymmetry">Mean cosine g, −1 to 1.</param>
    /// <param name="moments">How many moments beyond χ₀.</param>
    public static Medium HenyeyGreenstein(
        double absorptionPerMm,
        double scatteringPerMm,
        double asymmetry,
        int moments = 64
    )
    {
        var chi = new double[moments + 1];
        chi[0] = 1;
        for (int l = 1; l <= moments; l++)
        {
            chi[l] = chi[l - 1] * asymmetry;
        }
        return new(absorptionPerMm, scatteringPerMm, chi);
    }

    internal void Require()
    {
        if (!(AbsorptionPerMm >= 0 && double.IsFinite(AbsorptionPerMm)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(AbsorptionPerMm),
                AbsorptionPerMm,
                "Absorption must be 0 or more."
            );
        }
        if (!(ScatteringPerMm >= 0 && double.IsFinite(ScatteringPerMm)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(ScatteringPerMm),
                ScatteringPerMm,
                "Scattering must be 0 or more."
            );
        }
        if (ScatteringPerMm > 0 && (PhaseMoments.IsEmpty || Math.Abs(PhaseMoments.Span[0] - 1) > 1e-9))
        {
            throw new ArgumentException("A phase function's moments begin with 1.", nameof(PhaseMoments));
        }
        foreach (double moment in PhaseMoments.Span)
        {
            if (!(Math.Abs(moment) <= 1 + 1e-9))
            {
                throw new ArgumentException("A phase function's moments are -1 to 1.", nameof(PhaseMoments));
            }
        }
    }
}
