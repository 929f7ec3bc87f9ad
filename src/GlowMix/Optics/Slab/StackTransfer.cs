namespace GlowMix.Optics.Slab;

/// <summary>
/// Light of one wavelength in a stack of layers between a black floor and a Fresnel face to air: factored once, then asked
/// for any number of sources. Work space that is used again for the next wavelength; one per thread.
/// </summary>
/// <remarks>
/// Layers are joined from the top down by the reflection Γ that each sees above itself: Γ below a layer is
/// R + T Γ (1 − R Γ)⁻¹ T. A Lambertian floor is not in here: it only adds a multiple of the floor source (see
/// <see cref="SlabSolution"/>), so one solve serves every board.
/// </remarks>
internal sealed class StackTransfer(int nodes)
{
    private readonly int n = nodes;
    private readonly List<LayerOperators> layers = [];
    private readonly List<double[]> seenAbove = [];
    private readonly List<double[]> factors = [];
    private readonly List<double[]> sourceAbove = [];
    private readonly double[] product = new double[nodes * nodes];
    private readonly double[] first = new double[nodes];
    private readonly double[] second = new double[nodes];
    private readonly double[] third = new double[nodes];
    private readonly List<LayerEmission> emissions = [];
    private int diagonalFrom;

    /// <summary>Layers of the present stack, from the floor upwards.</summary>
    public int Count { get; private set; }

    public StreamQuadrature Quadrature { get; private set; } = null!;

    public LayerOperators Layer(int index) => layers[index];

    /// <summary>Starts a stack; layers follow from the floor upwards.</summary>
    public void Begin(StreamQuadrature quadrature)
    {
        Quadrature = quadrature;
        Count = 0;
    }

    public void Add(LayerModes modes, double depthMm)
    {
        if (layers.Count == Count)
        {
            layers.Add(new LayerOperators(n));
            seenAbove.Add(new double[n * n]);
            factors.Add(new double[n * n]);
            sourceAbove.Add(new double[n]);
            emissions.Add(new LayerEmission(n));
        }
        layers[Count++].Prepare(modes, depthMm, Quadrature);
    }

    /// <summary>Joins the layers; call after the last <see cref="Add"/>.</summary>
    public void Join()
    {
        // From the face down, Γ stays a diagonal (one number a direction) as long as only clear layers have been passed.
        diagonalFrom = 0;
        for (int i = Count - 1; i >= 0; i--)
        {
            if (i == Count - 1)
            {
                Quadrature.FaceReflectance.CopyTo(seenAbove[i], 0);
            }
            else
            {
                PassDown(i + 1);
            }
            if (layers[i].Modes.Scatters)
            {
                FactorLoop(i);
                diagonalFrom = Math.Max(diagonalFrom, i);
            }
        }
    }

    /// <summary>Unit Lambertian flux sent up from a black floor, inside the resin.</summary>
    /// <param name="light">Light in each layer.</param>
    /// <param name="lowest">
    /// The floor lies under this layer: what a layer sees above itself does not depend on what lies below, so a stack joined once
    /// also serves its upper part alone.
    /// </param>
    public SourceShares SolveFloor(LayerLight[] light, int lowest = 0)
    {
        for (int i = 0; i < n; i++)
        {
            first[i] = Quadrature.FluxRoots[i] / Math.PI;
        }
        ClearSources();
        return Climb(light, lowest);
    }

    /// <summary>Unit Lambertian flux from the air on the face.</summary>
    public SourceShares SolveSky(LayerLight[] light)
    {
        ClearSources();
        double scale = Quadrature.Index * Quadrature.Index / Math.PI;
        var top = sourceAbove[Count - 1];
        for (int i = 0; i < n; i++)
        {
            top[i] = scale * Quadrature.FluxRoots[i] * (1 - Quadrature.FaceReflectance[i]);
        }
        PassSourcesDown(Count - 1);
        Array.Clear(first);
        var shares = Climb(light);
        return shares with { Escaped = shares.Escaped + Quadrature.FaceReflectanceFromOutside };
    }

    /// <summary>One unit sent out evenly in all directions from a cell of a scattering layer.</summary>
    /// <param name="layer">Which layer.</param>
    /// <param name="fromMm">Lower edge of the cell above the layer's lower face.</param>
    /// <param name="toMm">Upper edge.</param>
    /// <param name="light">Light in each layer, without the source's own field (<see cref="CellSource.AddOwnFluence"/>).</param>
    public SourceShares SolveCell(int layer, double fromMm, double toMm, LayerLight[] light)
    {
        ClearSources();
        var emission = emissions[layer];
        emission.Emits = true;
        CellSource.Emit(layers[layer], Quadrature, fromMm, toMm, emission.HeldTop, emission.HeldBottom);
        emission.HeldTop.CopyTo(emission.Up, 0);
        emission.HeldBottom.CopyTo(emission.Down, 0);
        emission.AddAnswerToHeld(layers[layer]);
        PassSourcesDown(layer);
        Array.Clear(first);
        return Climb(light);
    }

    /// <summary>Unit flux, on horizontal area, of a collimated beam from the air.</summary>
    /// <param name="cosineInside">Cosine of the beam inside.</param>
    /// <param name="faceReflectance">Share that the face sends back.</param>
    /// <param name="light">Light in each layer, without the beam and its own field.</param>
    /// <param name="beam">Written: these, per layer.</param>
    public SourceShares SolveBeam(
        double cosineInside,
        double faceReflectance,
        LayerLight[] light,
        BeamLight[] beam
    )
    {
        ClearSources();
        double flux = 1 - faceReflectance;
        for (int i = Count - 1; i >= 0; i--)
        {
            beam[i] = new BeamLight(layers[i], Quadrature, cosineInside, flux, emissions[i]);
            flux = beam[i].FluxAtBottom;
        }
        PassSourcesDown(Count - 1);
        Array.Clear(first);
        var shares = Climb(light);
        return new SourceShares(shares.Escaped + faceReflectance, shares.Floor + flux);
    }

    private void ClearSources()
    {
        for (int i = 0; i < Count; i++)
        {
            Array.Clear(sourceAbove[i]);
            emissions[i].Emits = false;
        }
    }

    /// <summary>The light that comes down through the faces below, from the highest layer with a source on.</summary>
    private void PassSourcesDown(int highest)
    {
        for (int i = highest; i > 0; i--)
        {
            SourceBelow(i);
        }
    }

    private bool IsDiagonal(int layer) => layer >= diagonalFrom;

    /// <summary>target = Γ vector, Γ seen from the upper face of a layer.</summary>
    private void ApplySeenAbove(int layer, Span<double> target, ReadOnlySpan<double> vector)
    {
        if (!IsDiagonal(layer))
        {
            RowMath.Multiply(target, seenAbove[layer], vector);
            return;
        }
        for (int i = 0; i < n; i++)
        {
            target[i] = seenAbove[layer][i] * vector[i];
        }
    }

    /// <summary>LU factors of 1 − R Γ for a scattering layer.</summary>
    private void FactorLoop(int layer)
    {
        var loop = factors[layer].AsSpan();
        var reflection = layers[layer].Reflection;
        var above = seenAbove[layer];
        if (IsDiagonal(layer))
        {
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    loop[(i * n) + j] = -reflection[(i * n) + j] * above[j];
                }
            }
        }
        else
        {
            RowMath.MultiplyMatrices(loop, reflection, above, n);
            for (int i = 0; i < n * n; i++)
            {
                loop[i] = -loop[i];
            }
        }
        for (int i = 0; i < n; i++)
        {
            loop[(i * n) + i] += 1;
        }
        RowMath.FactorLu(loop, n);
    }

    /// <summary>Γ seen above the layer below, from the one seen above this layer.</summary>
    private void PassDown(int layer)
    {
        var above = seenAbove[layer];
        var below = seenAbove[layer - 1];
        var operators = layers[layer];
        if (!operators.Modes.Scatters)
        {
            var t = operators.StraightThrough;
            for (int i = 0; i < n; i++)
            {
                if (IsDiagonal(layer))
                {
                    below[i] = t[i] * above[i] * t[i];
                    continue;
                }
                for (int j = 0; j < n; j++)
                {
                    below[(i * n) + j] = t[i] * above[(i * n) + j] * t[j];
                }
            }
            return;
        }
        // product ← Γ (1 − R Γ)⁻¹ T
        operators.Transmission.CopyTo(below, 0);
        RowMath.SolveLuRows(below, factors[layer], n);
        if (IsDiagonal(layer))
        {
            for (int i = 0; i < n; i++)
            {
                RowMath.SetScaled(product.AsSpan(i * n, n), below.AsSpan(i * n, n), above[i]);
            }
        }
        else
        {
            RowMath.MultiplyMatrices(product, above, below, n);
        }
        RowMath.MultiplyMatrices(below, operators.Transmission, product, n);
        RowMath.AddScaled(below, operators.Reflection, 1);
    }

    /// <summary>The light that comes down through a layer's lower face if none goes up through it.</summary>
    private void SourceBelow(int layer)
    {
        var source = sourceAbove[layer];
        var below = sourceAbove[layer - 1];
        var operators = layers[layer];
        var emission = emissions[layer];
        operators.Reflect(second, source);
        if (emission.Emits)
        {
            RowMath.AddScaled(second, emission.Up, 1);
        }
        if (operators.Modes.Scatters)
        {
            RowMath.SolveLu(second, factors[layer], n);
        }
        ApplySeenAbove(layer, third, second);
        RowMath.AddScaled(third, source, 1);
        operators.Transmit(below, third);
        if (emission.Emits)
        {
            RowMath.AddScaled(below, emission.Down, 1);
        }
    }

    /// <summary>From the floor up: the light through every face, and from it the light inside. <c>first</c> holds what goes up at the floor.</summary>
    private SourceShares Climb(LayerLight[] light, int lowest = 0)
    {
        double arriving = 0;
        for (int i = lowest; i < Count; i++)
        {
            var operators = layers[i];
            var emission = emissions[i];
            // second ← up through the upper face
            operators.Transmit(second, first);
            operators.Reflect(third, sourceAbove[i]);
            RowMath.AddScaled(second, third, 1);
            if (emission.Emits)
            {
                RowMath.AddScaled(second, emission.Up, 1);
            }
            if (operators.Modes.Scatters)
            {
                RowMath.SolveLu(second, factors[i], n);
            }
            // third ← down through the upper face
            ApplySeenAbove(i, third, second);
            RowMath.AddScaled(third, sourceAbove[i], 1);
            if (i == lowest)
            {
                arriving = ArrivingAtFloor(lowest);
            }
            if (emission.Emits)
            {
                RowMath.AddScaled(third, emission.HeldTop, 1);
                RowMath.AddScaled(first, emission.HeldBottom, 1);
            }
            operators.Inside(light[i], first, third);
            second.CopyTo(first, 0);
        }
        double escaped = 0;
        for (int i = 0; i < n; i++)
        {
            escaped += Quadrature.FluxRoots[i] * (1 - Quadrature.FaceReflectance[i]) * first[i];
        }
        return new SourceShares(Math.Tau * escaped, arriving);
    }

    private double ArrivingAtFloor(int lowest)
    {
        var down = product.AsSpan(0, n);
        var reflected = product.AsSpan(n, n);
        layers[lowest].Transmit(down, third);
        layers[lowest].Reflect(reflected, first);
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            sum += Quadrature.FluxRoots[i] * (down[i] + reflected[i]);
        }
        if (emissions[lowest].Emits)
        {
            sum += RowMath.Dot(Quadrature.FluxRoots, emissions[lowest].Down);
        }
        return Math.Tau * sum;
    }
}
