using System.Numerics;
using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

/// <summary>The scattered light as a function of angle, for checks only: the slow way to the moments.</summary>
internal static class ScatteringAmplitudes
{
    /// <summary>
    /// Moments by Gauss–Legendre quadrature of |S₁|² + |S₂|² on more nodes than terms + l/2, where it is exact.
    /// </summary>
    public static double[] MomentsByQuadrature(LorenzMie sphere, int highest)
    {
        (double[] nodes, double[] weights) = Legendre(sphere.TermCount + (highest / 2) + 2);
        var sums = new double[highest + 1];
        for (int i = 0; i < nodes.Length; i++)
        {
            double light = weights[i] * Intensity(sphere, nodes[i]);
            double before = 0;
            double current = 1;
            for (int l = 0; l <= highest; l++)
            {
                sums[l] += light * current;
                double next = ((((2 * l) + 1) * nodes[i] * current) - (l * before)) / (l + 1);
                (before, current) = (current, next);
            }
        }
        return Array.ConvertAll(sums, sum => sum / sums[0]);
    }

    // Bohren & Huffman (1983), eqs 4.47 and 4.74: |S₁|² + |S₂|².
    private static double Intensity(LorenzMie sphere, double cosine)
    {
        Complex s1 = 0;
        Complex s2 = 0;
        double before = 0;
        double pi = 1;
        for (int n = 1; n <= sphere.TermCount; n++)
        {
            double tau = (n * cosine * pi) - ((n + 1) * before);
            double factor = ((2.0 * n) + 1) / (n * (n + 1.0));
            s1 += factor * ((sphere.Electric[n] * pi) + (sphere.Magnetic[n] * tau));
            s2 += factor * ((sphere.Electric[n] * tau) + (sphere.Magnetic[n] * pi));
            double next = ((((2.0 * n) + 1) * cosine * pi) - ((n + 1) * before)) / n;
            (before, pi) = (pi, next);
        }
        return Math.Pow(s1.Magnitude, 2) + Math.Pow(s2.Magnitude, 2);
    }

    // Newton on P_n from the usual first guess; a library rule beyond its own table lost five digits.
    private static (double[] Nodes, double[] Weights) Legendre(int count)
    {
        var nodes = new double[count];
        var weights = new double[count];
        for (int i = 0; i < count; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (count + 0.5));
            double slope = 1;
            for (int step = 0; step < 8; step++)
            {
                double before = 0;
                double value = 1;
                for (int n = 0; n < count; n++)
                {
                    double next = ((((2 * n) + 1) * x * value) - (n * before)) / (n + 1);
                    (before, value) = (value, next);
                }
                slope = count * ((x * value) - before) / ((x * x) - 1);
                x -= value / slope;
            }
            nodes[i] = x;
            weights[i] = 2 / ((1 - (x * x)) * slope * slope);
        }
        return (nodes, weights);
    }
}
