namespace GlowMix.Optics.Slab;

/// <summary>Γ: what a layer's upper face sends back into the layer from all that lies above it, and the light that goes to and fro there.</summary>
/// <remarks>
/// A diagonal, one number a direction, as long as only the face to air and clear layers lie above; a matrix under the first
/// layer that scatters.
/// </remarks>
internal sealed class SeenAbove(int nodes)
{
    private readonly int n = nodes;
    private readonly double[] reflection = new double[nodes * nodes];
    private readonly double[] factors = new double[nodes * nodes];
    private readonly double[] loop = new double[nodes * nodes];
    private readonly double[] sum = new double[nodes];
    private readonly double[] product = new double[nodes * nodes];
    private bool isNothing;
    private bool isDiagonal;
    private bool hasLoop;

    /// <summary>The face to air alone.</summary>
    public void SetToFace(StreamQuadrature quadrature)
    {
        quadrature.FaceReflectance.CopyTo(reflection, 0);
        isNothing = false;
        isDiagonal = true;
    }

    /// <summary>The same resin without end, and no light in it: nothing comes back.</summary>
    public void SetToNothing()
    {
        Array.Clear(reflection);
        isNothing = true;
        isDiagonal = true;
    }

    /// <summary>A layer, and what that layer sees above itself: R + T Γ (1 − R Γ)⁻¹ T.</summary>
    public void SetBelow(SeenAbove above, LayerOperators layer)
    {
        isNothing = above.isNothing && !layer.Modes.Scatters;
        isDiagonal = above.isDiagonal && !layer.Modes.Scatters;
        if (!layer.Modes.Scatters)
        {
            PassStraight(above, layer.StraightThrough);
            return;
        }
        if (above.isNothing)
        {
            layer.Reflection.CopyTo(reflection, 0);
            return;
        }
        RowMath.MultiplyMatrices(reflection, above.loop, layer.Transmission, n);
        if (above.isDiagonal)
        {
            for (int i = 0; i < n; i++)
            {
                RowMath.SetScaled(product.AsSpan(i * n, n), reflection.AsSpan(i * n, n), above.reflection[i]);
            }
        }
        else
        {
            RowMath.MultiplyMatrices(product, above.reflection, reflection, n);
        }
        RowMath.MultiplyMatrices(reflection, layer.Transmission, product, n);
        RowMath.AddScaled(reflection, layer.Reflection, 1);
    }

    /// <summary>Inverts 1 − R Γ for the layer below; a clear layer sends nothing back up, and nothing sends nothing back down.</summary>
    public void CloseLoop(LayerOperators layer)
    {
        hasLoop = layer.Modes.Scatters && !isNothing;
        if (!hasLoop)
        {
            return;
        }
        if (isDiagonal)
        {
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    factors[(i * n) + j] = -layer.Reflection[(i * n) + j] * reflection[j];
                }
            }
        }
        else
        {
            RowMath.MultiplyMatrices(factors, layer.Reflection, reflection, n);
            RowMath.SetScaled(factors, factors, -1);
        }
        for (int i = 0; i < n; i++)
        {
            factors[(i * n) + i] += 1;
        }
        RowMath.FactorLu(factors, n);
        RowMath.InvertLu(loop, factors, n);
    }

    /// <summary>up ← (1 − R Γ)⁻¹ up: all the light that goes up through the face, from what does so for the first time.</summary>
    public void SumLoop(Span<double> up)
    {
        if (hasLoop)
        {
            RowMath.Multiply(sum, loop, up);
            sum.CopyTo(up);
        }
    }

    /// <summary>down = Γ up.</summary>
    public void SendBack(Span<double> down, ReadOnlySpan<double> up)
    {
        if (!isDiagonal)
        {
            RowMath.Multiply(down, reflection, up);
            return;
        }
        for (int i = 0; i < n; i++)
        {
            down[i] = reflection[i] * up[i];
        }
    }

    private void PassStraight(SeenAbove above, double[] through)
    {
        for (int i = 0; i < n; i++)
        {
            if (isDiagonal)
            {
                reflection[i] = through[i] * above.reflection[i] * through[i];
                continue;
            }
            for (int j = 0; j < n; j++)
            {
                reflection[(i * n) + j] = through[i] * above.reflection[(i * n) + j] * through[j];
            }
        }
    }
}
