namespace GlowMix.Optics.Slab;

/// <summary>
/// Where light of one wavelength goes in a stack of layers over a Lambertian floor. Immutable, and safe to ask from several threads.
/// </summary>
/// <remarks>
/// Azimuth-averaged discrete ordinates. Solved once over a black floor; a floor of reflectance ρ sends up ρ / (1 − ρ B) of the
/// light that first meets it, B being the share of the floor source that comes back.
/// </remarks>
public sealed class SlabSolution
{
    private readonly LayerStack stack;
    private readonly StackTransfer transfer;
    private readonly UnitSource floor;
    private readonly UnitSource sky;

    // The transfer works in place: one further source at a time.
    private readonly Lock furtherSource = new();

    private SlabSolution(LayerStack stack, StackTransfer transfer, double floorReflectance)
    {
        this.stack = stack;
        this.transfer = transfer;
        FloorReflectance = floorReflectance;
        var floorLight = NewLight(transfer);
        var skyLight = NewLight(transfer);
        floor = new UnitSource(transfer, transfer.SolveFloor(floorLight), floorLight);
        sky = new UnitSource(transfer, transfer.SolveSky(skyLight), skyLight);
    }

    /// <summary>Reflectance of the floor, inside the resin.</summary>
    public double FloorReflectance { get; }

    /// <summary>Unit Lambertian flux sent up at the floor, inside the resin.</summary>
    public SourceFate FromFloor => floor.Over(floor, FloorReflectance);

    /// <summary>Unit Lambertian flux on the face, from the air.</summary>
    public SourceFate FromSky => sky.Over(floor, FloorReflectance);

    /// <summary>Solves a stack.</summary>
    /// <param name="stack">The layers.</param>
    /// <param name="floorReflectance">0 to 1, as the resin sees the floor.</param>
    /// <param name="nodes">Directions in the escape cone and as many beyond: an even number from 2 to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reflectance or number of nodes out of range.</exception>
    public static SlabSolution Of(
        LayerStack stack,
        double floorReflectance = 0,
        int nodes = StreamQuadrature.StandardNodes
    )
    {
        ArgumentNullException.ThrowIfNull(stack);
        if (!(floorReflectance is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(floorReflectance),
                floorReflectance,
                "A floor's reflectance must be 0 to 1."
            );
        }
        var quadrature = StreamQuadrature.For(stack.Index, nodes);
        var transfer = new StackTransfer(quadrature.Count);
        transfer.Begin(quadrature);
        foreach (var layer in stack.Layers)
        {
            var modes = new LayerModes(quadrature.Count);
            modes.Solve(layer.Medium, quadrature);
            transfer.Add(modes, layer.DepthMm);
        }
        transfer.Join();
        return new SlabSolution(stack, transfer, floorReflectance);
    }

    /// <summary>Share of an isotropic emitter's light, at a height in a layer, that leaves through the face.</summary>
    /// <param name="layer">Index from the floor upwards.</param>
    /// <param name="heightMm">Height above the layer's lower face.</param>
    /// <remarks>By reciprocity: fluence under unit Lambertian light from the air over 4 n².</remarks>
    /// <exception cref="ArgumentOutOfRangeException">No such layer, or a height outside it.</exception>
    public double EscapeShare(int layer, double heightMm) =>
        FromSky.Fluence(layer, heightMm) / (4 * transfer.Quadrature.Index * transfer.Quadrature.Index);

    /// <summary>The same, found by following the light of a thin emitting cell of a scattering layer.</summary>
    /// <param name="layer">Index from the floor upwards; must scatter.</param>
    /// <param name="fromMm">Lower edge of the cell above the layer's lower face.</param>
    /// <param name="toMm">Upper edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such layer, or an edge outside it.</exception>
    /// <exception cref="ArgumentException">A layer that does not scatter, or no height between the edges.</exception>
    public SourceShares OfEmittingCell(int layer, double fromMm, double toMm)
    {
        RequireWithin(transfer, layer, fromMm, nameof(fromMm));
        RequireWithin(transfer, layer, toMm, nameof(toMm));
        if (!(toMm > fromMm))
        {
            throw new ArgumentException("A cell's upper edge lies above its lower one.", nameof(toMm));
        }
        if (!transfer.Layer(layer).Modes.Scatters)
        {
            throw new ArgumentException("An emitting cell lies in a layer that scatters.", nameof(layer));
        }
        SourceShares shares;
        lock (furtherSource)
        {
            shares = transfer.SolveCell(layer, fromMm, toMm, NewLight(transfer));
        }
        double up = FloorReflectance * shares.Floor / (1 - (FloorReflectance * floor.Shares.Floor));
        return new SourceShares(
            shares.Escaped + (up * floor.Shares.Escaped),
            (shares.Floor + (up * floor.Shares.Floor)) * (1 - FloorReflectance)
        );
    }

    /// <summary>A collimated beam from the air.</summary>
    /// <param name="cosine">Cosine to the normal in air, 1e-6 to 1. Flux is counted on horizontal area: the beam carries 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cosine is out of range.</exception>
    /// <remarks>
    /// Light in one direction shows the coarseness of the nodes more than Lambertian light does: at g 0.95 some 4e-4 of it with
    /// 8 nodes, 5e-5 with 16.
    /// </remarks>
    public BeamFate OfBeam(double cosine)
    {
        if (!(cosine is >= 1e-6 and <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(cosine),
                cosine,
                "A beam's cosine must be 1e-6 to 1."
            );
        }
        double n = stack.Index;
        double inside = Math.Sqrt(((n - 1) * (n + 1)) + (cosine * cosine)) / n;
        double face = Fresnel.Reflectance(cosine, n);
        var light = NewLight(transfer);
        var beam = new BeamLight[transfer.Count];
        SourceShares shares;
        lock (furtherSource)
        {
            shares = transfer.SolveBeam(inside, face, light, beam);
        }
        double depth = stack.Layers.Sum(l =>
            l.DepthMm * (l.Medium.AbsorptionPerMm + l.Medium.ScatteringPerMm)
        );
        return new BeamFate(
            new UnitSource(transfer, shares, light, beam).Over(floor, FloorReflectance),
            face,
            (1 - face) * Math.Exp(-depth / inside)
        );
    }

    internal static LayerLight[] NewLight(StackTransfer transfer)
    {
        var light = new LayerLight[transfer.Count];
        for (int i = 0; i < light.Length; i++)
        {
            light[i] = new LayerLight(transfer.Quadrature.Count);
        }
        return light;
    }

    private static void RequireWithin(StackTransfer transfer, int layer, double heightMm, string name)
    {
        if (layer < 0 || layer >= transfer.Count)
        {
            throw new ArgumentOutOfRangeException(
                nameof(layer),
                layer,
                $"Layers are 0 to {transfer.Count - 1}, from the floor upwards."
            );
        }
        double depthMm = transfer.Layer(layer).DepthMm;
        if (!(heightMm >= 0 && heightMm <= depthMm))
        {
            throw new ArgumentOutOfRangeException(
                name,
                heightMm,
                FormattableString.Invariant($"A height in layer {layer} is 0 to {depthMm} mm.")
            );
        }
    }

    private sealed class UnitSource
    {
        private readonly StackTransfer transfer;
        private readonly LayerLight[] light;
        private readonly BeamLight[]? beam;
        private readonly double[] absorbed;

        public UnitSource(
            StackTransfer transfer,
            SourceShares shares,
            LayerLight[] light,
            BeamLight[]? beam = null
        )
        {
            this.transfer = transfer;
            this.beam = beam;
            this.light = light;
            // Where nothing comes through, rounding may leave a little less than nothing.
            Shares = new(Math.Max(0, shares.Escaped), Math.Max(0, shares.Floor));
            absorbed = new double[light.Length];
            for (int i = 0; i < light.Length; i++)
            {
                absorbed[i] = Math.Max(0, transfer.Layer(i).Absorbed(light[i]) + (beam?[i].Absorbed() ?? 0));
                transfer.Layer(i).PrepareFluence(light[i]);
            }
        }

        public SourceShares Shares { get; }

        public SourceFate Over(UnitSource floor, double reflectance)
        {
            double up = reflectance * Shares.Floor / (1 - (reflectance * floor.Shares.Floor));
            var inLayers = new double[absorbed.Length];
            for (int i = 0; i < inLayers.Length; i++)
            {
                inLayers[i] = absorbed[i] + (up * floor.absorbed[i]);
            }
            return new SourceFate(
                Shares.Escaped + (up * floor.Shares.Escaped),
                (1 - reflectance) * (Shares.Floor + (up * floor.Shares.Floor)),
                inLayers,
                (layer, heightMm) => FluenceAt(layer, heightMm) + (up * floor.FluenceAt(layer, heightMm))
            );
        }

        private double FluenceAt(int layer, double heightMm)
        {
            RequireWithin(transfer, layer, heightMm, nameof(heightMm));
            var operators = transfer.Layer(layer);
            return beam is null
                ? operators.Fluence(light[layer], heightMm)
                : Math.Max(
                    0,
                    operators.SignedFluence(light[layer], heightMm) + beam[layer].Fluence(heightMm)
                );
        }
    }
}
