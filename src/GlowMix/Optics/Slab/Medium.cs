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
    /// <param name="absorptionPerMm">Absorption coefficient, 0 or more.</param>
    /// <param name="scatteringPerMm">Scattering coefficient, 0 or more.</param>
    /// <param name="asymmetry">Mean cosine g, −1 to 1.</param>
    /// <param name="moments">How many moments beyond χ₀, 0 or more; by default as many as the finest quadrature uses.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static Medium HenyeyGreenstein(
        double absorptionPerMm,
        double scatteringPerMm,
        double asymmetry,
        int moments = StreamQuadrature.MostMoments
    )
    {
        if (!(asymmetry is >= -1 and <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(asymmetry),
                asymmetry,
                "A mean cosine must be -1 to 1."
            );
        }
        ArgumentOutOfRangeException.ThrowIfNegative(moments);
        RequireCoefficient(absorptionPerMm, nameof(absorptionPerMm), "Absorption");
        RequireCoefficient(scatteringPerMm, nameof(scatteringPerMm), "Scattering");
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
        RequireCoefficient(AbsorptionPerMm, nameof(AbsorptionPerMm), "Absorption");
        RequireCoefficient(ScatteringPerMm, nameof(ScatteringPerMm), "Scattering");
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

    private static void RequireCoefficient(double perMm, string name, string what)
    {
        if (!(perMm >= 0 && double.IsFinite(perMm)))
        {
            throw new ArgumentOutOfRangeException(name, perMm, $"{what} must be 0 or more.");
        }
    }
}
