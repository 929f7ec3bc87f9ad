using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>Refractive index over wavelength by the usual formulas; the wavelength is in µm in all of them.</summary>
public static class Dispersion
{
    /// <summary>Fraunhofer line d (helium), µm: where n_d is told.</summary>
    public const double LineDUm = 0.5876;

    private const double LineFUm = 0.4861;
    private const double LineCUm = 0.6563;

    /// <summary>n = n_d + B (1/λ² − 1/λ_d²), with B such that the Abbe number is V = (n_d − 1) / (n_F − n_C).</summary>
    public static double Abbe(double wavelengthUm, double indexD, double abbeNumber)
    {
        double b = (indexD - 1) / abbeNumber / (InverseSquare(LineFUm) - InverseSquare(LineCUm));
        return indexD + (b * (InverseSquare(wavelengthUm) - InverseSquare(LineDUm)));
    }

    /// <summary>Sellmeier 1871: n² = 1 + Σ b λ² / (λ² − c), c in µm².</summary>
    public static double Sellmeier(double wavelengthUm, ImmutableArray<(double B, double CUm2)> terms)
    {
        double square = wavelengthUm * wavelengthUm;
        return Math.Sqrt(1 + terms.Sum(term => term.B * square / (square - term.CUm2)));
    }

    /// <summary>n² = a + Σ b / (λ² − c), b and c in µm²: Sellmeier's formula with the ultraviolet far away in a.</summary>
    public static double SellmeierWithOffset(
        double wavelengthUm,
        double a,
        ImmutableArray<(double BUm2, double CUm2)> terms
    )
    {
        double square = wavelengthUm * wavelengthUm;
        return Math.Sqrt(a + terms.Sum(term => term.BUm2 / (square - term.CUm2)));
    }

    /// <summary>Cauchy: n = a + b/λ² + c/λ⁴, b in µm², c in µm⁴.</summary>
    public static double Cauchy(double wavelengthUm, double a, double bUm2, double cUm4)
    {
        double inverse = InverseSquare(wavelengthUm);
        return a + (bUm2 * inverse) + (cUm4 * inverse * inverse);
    }

    private static double InverseSquare(double wavelengthUm) => 1 / (wavelengthUm * wavelengthUm);
}
