namespace GlowMix.Optics;

/// <summary>Reflection of unpolarised light at a plane face between air and a clear medium.</summary>
public static class Fresnel
{
    /// <summary>Share of light that the face sends back.</summary>
    /// <param name="cosine">Cosine to the normal on the side the light comes from, 0 to 1.</param>
    /// <param name="relativeIndex">Index of the far side over that of the near side: n from outside, 1/n from inside.</param>
    /// <returns>0 to 1; exactly 1 beyond the critical angle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A cosine that is none, or an index of 0 or less.</exception>
    /// <remarks>Fresnel's equations, mean of both polarisations (Bohren &amp; Huffman 1983, section 2.7, real indices).</remarks>
    public static double Reflectance(double cosine, double relativeIndex)
    {
        if (!(cosine is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(cosine), cosine, "A cosine must be 0 to 1.");
        }
        if (!(relativeIndex > 0 && double.IsFinite(relativeIndex)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(relativeIndex),
                relativeIndex,
                "A relative index must be above 0."
            );
        }
        // sin² as (1 − c)(1 + c): near normal incidence 1 − c² has lost half its digits.
        double sineSquaredBeyond = (1 - cosine) * (1 + cosine) / (relativeIndex * relativeIndex);
        if (sineSquaredBeyond >= 1)
        {
            return 1;
        }
        double cosineBeyond = Math.Sqrt(1 - sineSquaredBeyond);
        double across = (cosine - (relativeIndex * cosineBeyond)) / (cosine + (relativeIndex * cosineBeyond));
        double along = ((relativeIndex * cosine) - cosineBeyond) / ((relativeIndex * cosine) + cosineBeyond);
        return ((across * across) + (along * along)) / 2;
    }

    /// <summary>Share of Lambertian light from the air that the face sends back.</summary>
    /// <param name="index">Index of the medium, 1 or more.</param>
    /// <remarks>Closed form of Walsh 1926 and Duntley 1942.</remarks>
    public static double DiffuseFromOutside(double index)
    {
        RequireIndex(index);
        double n = index;
        if (n - 1 < 1e-3)
        {
            // The closed form is a difference of large terms here; the integral is not.
            return DiffuseByQuadrature(n);
        }
        double square = n * n;
        double fourth = square * square;
        double sum = square + 1;
        return 0.5
            + ((n - 1) * ((3 * n) + 1) / (6 * (n + 1) * (n + 1)))
            + (square * (square - 1) * (square - 1) / (sum * sum * sum) * Math.Log((n - 1) / (n + 1)))
            - (2 * n * square * (square + (2 * n) - 1) / (sum * (fourth - 1)))
            + (8 * fourth * (fourth + 1) / (sum * (fourth - 1) * (fourth - 1)) * Math.Log(n));
    }

    /// <summary>Share of Lambertian light inside the medium that the face sends back, total reflection included.</summary>
    /// <param name="index">Index of the medium, 1 or more.</param>
    /// <remarks>By étendue: 1 − (1 − outside) / n².</remarks>
    public static double DiffuseFromInside(double index) =>
        1 - ((1 - DiffuseFromOutside(index)) / (index * index));

    /// <summary>Cosine of the critical angle inside a medium of this index.</summary>
    public static double CriticalCosine(double index)
    {
        RequireIndex(index);
        return Math.Sqrt((index - 1) * (index + 1)) / index;
    }

    private static double DiffuseByQuadrature(double index)
    {
        var rule = new MathNet.Numerics.Integration.GaussLegendreRule(0, 1, 32);
        double sum = 0;
        for (int i = 0; i < rule.Order; i++)
        {
            // Nodes in the square root of the cosine: grazing light changes fastest there.
            double root = rule.Abscissas[i];
            double cosine = root * root;
            sum += rule.Weights[i] * 2 * root * 2 * cosine * Reflectance(cosine, index);
        }
        return sum;
    }

    private static void RequireIndex(double index)
    {
        if (!(index >= 1 && index <= 4))
        {
            throw new ArgumentOutOfRangeException(nameof(index), index, "A refractive index must be 1 to 4.");
        }
    }
}
