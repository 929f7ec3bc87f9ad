namespace GlowMix.Choosing.Draws;

/// <summary>Interpolation by the polynomial through a few nodes.</summary>
internal static class Lagrange
{
    /// <summary>Weights of the nodes' values in the value at <paramref name="at"/>; they add up to 1.</summary>
    public static void Weights(ReadOnlySpan<double> nodes, double at, Span<double> weights)
    {
        for (int i = 0; i < nodes.Length; i++)
        {
            weights[i] = 1;
            for (int j = 0; j < nodes.Length; j++)
            {
                if (j != i)
                {
                    weights[i] *= (at - nodes[j]) / (nodes[i] - nodes[j]);
                }
            }
        }
    }
}
