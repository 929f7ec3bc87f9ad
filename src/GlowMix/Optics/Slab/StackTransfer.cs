namespace GlowMix.Optics.Slab;

/// <summary>
/// Light of one wavelength in a stack of layers between a black floor and a Fresnel face to air: factored once, then asked
/// for any number of sources. Work space that is used again for the next wavelength; one per thread.
/// </summary>
/// <remarks>
/// Layers are joined from the top down by what each sees above itself (<see cref="SeenAbove"/>). A Lambertian floor is not in
/// here: it only adds a multiple of the floor source (see
/// <see cref="SlabSolution"/>), so one solve serves every board.
/// </remarks>
internal sealed class StackTransfer(int nodes)
{
    private readonly int n = nodes;
    private readonly List<LayerOperators> layers = [];
    private readonly List<SeenAbove> seenAbove = [];
    private readonly List<double[]> sourceAbove = [];
    private readonly double[] first = new double[nodes];
    private readonly double[] second = new double[nodes];
    private readonly double[] third = new double[nodes];
    private readonly double[] fourth = new double[nodes];
    private readonly List<LayerEmission> emissions = [];
    private bool isOpen;
    private bool isLowerPart;

    /// <summary>Layers of the present stack, from the floor upwards.</summary>
    public int Count { get; private set; }

    public StreamQuadrature Quadrature { get; private set; } = null!;

    public LayerOperators Layer(int index) => layers[index];

    /// <summary>Starts a stack; layers follow from the floor upwards.</summary>
    public void Begin(StreamQuadrature quadrature)
    {
        Quadrature = quadrature;
        Count = 0;
        if (isLowerPart)
        {
            layers.Clear();
            isLowerPart = false;
        }
    }

    /// <summary>Starts with the lowest layers of another stack, as they are prepared there.</summary>
    public void BeginWithLowest(StackTransfer whole, int count)
    {
        Quadrature = whole.Quadrature;
        layers.Clear();
        isLowerPart = true;
        for (Count = 0; Count < count; Count++)
        {
            layers.Add(whole.layers[Count]);
            MakeRoom();
        }
    }

    public void Add(LayerModes modes, double depthMm)
    {
        if (layers.Count == Count)
        {
            layers.Add(new LayerOperators(n));
            MakeRoom();
        }
        layers[Count++].Prepare(modes, depthMm, Quadrature);
    }

    /// <summary>Adds the layer that stood here in the stack before, prepared already.</summary>
    public void AddStanding() => Count++;

    private void MakeRoom()
    {
        if (seenAbove.Count == Count)
        {
            seenAbove.Add(new SeenAbove(n));
            sourceAbove.Add(new double[n]);
            emissions.Add(new LayerEmission(n));
        }
    }

    /// <summary>Joins the layers; call after the last <see cref="Add"/>.</summary>
    /// <param name="openTop">True where the same resin goes on above and nothing comes back from it: no face to air.</param>
    public void Join(bool openTop = false)
    {
        isOpen = openTop;
        for (int i = Count - 1; i >= 0; i--)
        {
            if (i == Count - 1 && isOpen)
            {
                seenAbove[i].SetToNothing();
            }
            else if (i == Count - 1)
            {
                seenAbove[i].SetToFace(Quadrature);
            }
            else
            {
                seenAbove[i].SetBelow(seenAbove[i + 1], layers[i + 1]);
            }
            seenAbove[i].CloseLoop(layers[i]);
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

    /// <summary>Unit Lambertian flux down through an open top, inside the resin.</summary>
    public SourceShares SolveDown(LayerLight[] light)
    {
        ClearSources();
        var top = sourceAbove[Count - 1];
        for (int i = 0; i < n; i++)
        {
            top[i] = Quadrature.FluxRoots[i] / Math.PI;
        }
        PassSourcesDown(Count - 1);
        Array.Clear(first);
        return Climb(light);
    }

    /// <summary>One unit sent out evenly in all directions from a cell of a scattering layer.</summary>
    /// <param name="layer">Which layer.</param>
    /// <param name="fromMm">Lower edge of the cell above the layer's lower face.</param>
    /// <param name="toMm">Upper edge.</param>
    /// <param name="light">Light in each layer, without the source's own field (<see cref="CellSource.AddOwnFluence"/>).</param>
    public SourceShares SolveCell(int layer, double fromMm, double toMm, LayerLight[] light)
    {
        EmitFromCell(layer, fromMm, toMm);
        return Climb(light);
    }

    /// <summary>
    /// The same light in the cell's own layer and those below it alone. Into what lies above, a cell sends what that, by
    /// reciprocity, sends into the cell.
    /// </summary>
    public void SolveCellBelow(int layer, double fromMm, double toMm, LayerLight[] light)
    {
        EmitFromCell(layer, fromMm, toMm);
        ClimbThrough(light, 0, layer);
    }

    private void EmitFromCell(int layer, double fromMm, double toMm)
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
        seenAbove[layer].SumLoop(second);
        seenAbove[layer].SendBack(third, second);
        RowMath.AddScaled(third, source, 1);
        operators.Transmit(below, third);
        if (emission.Emits)
        {
            RowMath.AddScaled(below, emission.Down, 1);
        }
    }

    /// <summary>From the floor up through every layer, and out. <c>first</c> holds what goes up at the floor.</summary>
    private SourceShares Climb(LayerLight[] light, int lowest = 0)
    {
        double arriving = ClimbThrough(light, lowest, Count - 1);
        double escaped = 0;
        for (int i = 0; i < n; i++)
        {
            double through = isOpen ? 1 : 1 - Quadrature.FaceReflectance[i];
            escaped += Quadrature.FluxRoots[i] * through * first[i];
        }
        return new SourceShares(Math.Tau * escaped, arriving);
    }

    /// <summary>The light through the faces of some layers, and from it the light inside them.</summary>
    /// <returns>What comes down on the lowest face; <c>first</c> then holds what goes up through the highest.</returns>
    private double ClimbThrough(LayerLight[] light, int lowest, int highest)
    {
        double arriving = 0;
        for (int i = lowest; i <= highest; i++)
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
            seenAbove[i].SumLoop(second);
            // third ← down through the upper face
            seenAbove[i].SendBack(third, second);
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
        return arriving;
    }

    private double ArrivingAtFloor(int lowest)
    {
        layers[lowest].Transmit(fourth, third);
        double sum = RowMath.Dot(Quadrature.FluxRoots, fourth);
        layers[lowest].Reflect(fourth, first);
        sum += RowMath.Dot(Quadrature.FluxRoots, fourth);
        if (emissions[lowest].Emits)
        {
            sum += RowMath.Dot(Quadrature.FluxRoots, emissions[lowest].Down);
        }
        return Math.Tau * sum;
    }
}
