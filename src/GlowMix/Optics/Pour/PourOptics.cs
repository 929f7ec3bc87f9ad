using GlowMix.Optics.Slab;
using GlowMix.Spectra;

namespace GlowMix.Optics.Pour;

/// <summary>
/// A pour solved at all wavelengths over a black floor: what its LEDs' light, light from above and its own glow do in it. Any
/// board, LED, lamp or charge is then a sum over these numbers. Immutable.
/// </summary>
public sealed class PourOptics
{
    private readonly PourGrid grid;

    private PourOptics(PourStack stack, PourGrid grid)
    {
        Stack = stack;
        this.grid = grid;
        int cells = grid.Cells.Count;
        WholeFloor = new SourceResponse(WavelengthGrid.Count, cells);
        Sky = new SourceResponse(WavelengthGrid.Count, cells);
        OverPackages = grid.FirstOverPackages < 0 ? null : new SourceResponse(WavelengthGrid.Count, cells);
        if (grid.FirstOverPackages > 0)
        {
            DownBetween = new SourceResponse(WavelengthGrid.Count, cells);
            UpBetween = new SourceResponse(WavelengthGrid.Count, cells);
        }
        GroupFluence = new double[WavelengthGrid.Count][];
    }

    private PourOptics(PourOptics other, PourStack stack)
    {
        Stack = stack;
        grid = other.grid;
        WholeFloor = other.WholeFloor;
        Sky = other.Sky;
        OverPackages = other.OverPackages;
        DownBetween = other.DownBetween;
        UpBetween = other.UpBetween;
        GroupFluence = other.GroupFluence;
    }

    /// <summary>What was solved.</summary>
    public PourStack Stack { get; }

    /// <summary>The same pour, were its pigments' yields others: light does not know of them before it is sent out again.</summary>
    /// <param name="yields">One a layer of the stack, 0 to 1.</param>
    internal PourOptics WithYields(IReadOnlyList<double> yields) =>
        new(this, Stack with { Layers = [.. Stack.Layers.Select((l, i) => l with { Yield = yields[i] })] });

    /// <summary>Fine cells of the pigmented layers, from the board upwards.</summary>
    public IReadOnlyList<PourCell> Cells => grid.Cells;

    /// <summary>Unit flux up at the packages' tops, in what lies over them; null where the packages stay in air.</summary>
    internal SourceResponse? OverPackages { get; }

    /// <summary>
    /// Unit flux down at the packages' tops, in what lies between them alone: what goes up again has 'escaped'. Null where nothing
    /// does, or the packages stay in air.
    /// </summary>
    internal SourceResponse? DownBetween { get; }

    /// <summary>The same for unit flux up at the board.</summary>
    internal SourceResponse? UpBetween { get; }

    /// <summary>Unit flux up at the board, in the whole pour.</summary>
    internal SourceResponse WholeFloor { get; }

    /// <summary>Unit flux from the air, in the whole pour.</summary>
    internal SourceResponse Sky { get; }

    /// <summary>
    /// Mean fluence in a group of cells (column) per photon that another (row) sends out, over a black floor; null at wavelengths
    /// where no pigment emits.
    /// </summary>
    internal double[]?[] GroupFluence { get; }

    internal PourGrid Grid => grid;

    /// <summary>Absorption by pigment in the layer of a cell, per mm of layer.</summary>
    internal double PigmentAbsorptionPerMm(int layer, int wavelength)
    {
        var l = Stack.Layers[layer];
        return l.VolumeFraction * l.Grains!.AbsorptionPerMm[wavelength];
    }

    /// <summary>Solves a pour.</summary>
    /// <param name="stack">Resin, layers, package height.</param>
    /// <param name="withGlow">False leaves out what only pigment's own light needs.</param>
    public static PourOptics Of(PourStack stack, bool withGlow = true) => OfDepths([stack], withGlow)[0];

    /// <summary>
    /// Solves pours of the same layers at other depths. Diffusing modes do not depend on depth: they are worked out once for all
    /// of them, and every pour comes out as if it had been solved alone.
    /// </summary>
    /// <param name="stacks">At least one; the same resin, and layer for layer the same mix.</param>
    /// <param name="withGlow">False leaves out what only pigment's own light needs.</param>
    /// <exception cref="ArgumentException">None, or pours of other resin or mixes.</exception>
    public static IReadOnlyList<PourOptics> OfDepths(IReadOnlyList<PourStack> stacks, bool withGlow = true) =>
        Of(stacks, withGlow, fineness: 1);

    /// <summary>The same with so many times more cells, to see what they leave out.</summary>
    internal static PourOptics[] Of(IReadOnlyList<PourStack> stacks, bool withGlow, int fineness)
    {
        ArgumentNullException.ThrowIfNull(stacks);
        if (stacks.Count == 0 || stacks.Any(s => !HaveSameMixes(s, stacks[0])))
        {
            throw new ArgumentException("Needed: pours that differ in depths alone.", nameof(stacks));
        }
        var pours = stacks.Select(s => new PourOptics(s, new PourGrid(s, fineness))).ToArray();
        var bench = new Bench(pours);
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            bench.SolveAt(i, withGlow);
        }
        return pours;
    }

    private static bool HaveSameMixes(PourStack one, PourStack other) =>
        ReferenceEquals(one.Resin, other.Resin)
        && one.Layers.Count == other.Layers.Count
        && one.Layers.Zip(other.Layers)
            .All(l =>
                l.First.VolumeFraction == l.Second.VolumeFraction
                && ReferenceEquals(l.First.Grains, l.Second.Grains)
            );

    /// <summary>Re-absorption is smooth in wavelength: every second sample carries it, where anything emits.</summary>
    private bool GlowsAt(int wavelength) =>
        wavelength % 2 == 0
        && Stack.Layers.Any(l => l.HasPigment && l.EmissionPerNm![wavelength] * WavelengthGrid.StepNm > 1e-4);

    /// <summary>Work space for one pass over the wavelengths.</summary>
    private sealed class Bench
    {
        private readonly PourOptics[] pours;
        private readonly LayerModes[] modes;
        private readonly StackTransfer transfer;
        private readonly StackTransfer between;
        private readonly CellWeights[] weights;
        private readonly LayerLight[] light;

        // The pour on the bench.
        private PourOptics optics;

        public Bench(PourOptics[] pours)
        {
            this.pours = pours;
            optics = pours[0];
            int nodes = optics.Stack.Resin.StreamsAt(0).Count;
            int mostParts = pours.Max(p => p.grid.Parts.Count);
            int mostCells = pours.Max(p => p.grid.Parts.Max(part => part.CellCount));
            modes = [.. optics.Stack.Layers.Select(_ => new LayerModes(nodes))];
            transfer = new StackTransfer(nodes);
            between = new StackTransfer(nodes);
            weights = [.. Enumerable.Range(0, mostParts).Select(_ => new CellWeights(nodes, mostCells))];
            light = [.. Enumerable.Range(0, mostParts).Select(_ => new LayerLight(nodes))];
        }

        public void SolveAt(int wavelength, bool withGlow)
        {
            var streams = optics.Stack.Resin.StreamsAt(wavelength);
            for (int i = 0; i < modes.Length; i++)
            {
                modes[i].Solve(MediumOf(optics.Stack, i, wavelength), streams);
            }
            foreach (var pour in pours)
            {
                optics = pour;
                SolvePour(wavelength, streams, withGlow && pour.GlowsAt(wavelength));
            }
        }

        private void SolvePour(int wavelength, StreamQuadrature streams, bool withGlow)
        {
            var parts = optics.grid.Parts;
            transfer.Begin(streams);
            foreach (var part in parts)
            {
                transfer.Add(modes[part.Layer], part.DepthMm);
            }
            transfer.Join();
            for (int i = 0; i < parts.Count; i++)
            {
                if (parts[i].CellCount > 0)
                {
                    weights[i].Prepare(transfer.Layer(i), parts[i].EdgesMm);
                }
            }
            Record(optics.Sky, wavelength, transfer.SolveSky(light));
            Record(optics.WholeFloor, wavelength, transfer.SolveFloor(light));
            if (withGlow)
            {
                optics.GroupFluence[wavelength] = SolveGroups();
            }

            if (optics.OverPackages is { } over)
            {
                int first = optics.grid.FirstOverPackages;
                Record(over, wavelength, transfer.SolveFloor(light, first), first);
            }
            if (optics.DownBetween is { } down)
            {
                SolveBetween(down, optics.UpBetween!, wavelength, streams);
            }
        }

        private void SolveBetween(
            SourceResponse down,
            SourceResponse up,
            int wavelength,
            StreamQuadrature streams
        )
        {
            int count = optics.grid.FirstOverPackages;
            between.Begin(streams);
            foreach (var part in optics.grid.Parts.Take(count))
            {
                between.Add(modes[part.Layer], part.DepthMm);
            }
            between.Join(openTop: true);
            Record(down, wavelength, between.SolveDown(light), endPart: count);
            Record(up, wavelength, between.SolveFloor(light), endPart: count);
        }

        /// <summary>Keeps one source's answer in the parts from one, upwards to below another.</summary>
        private void Record(
            SourceResponse response,
            int wavelength,
            SourceShares shares,
            int firstPart = 0,
            int endPart = int.MaxValue
        )
        {
            var stack = optics.Stack;
            var parts = optics.grid.Parts;
            int cells = optics.Cells.Count;
            // Through a pour that lets nothing through, rounding may leave a little less than nothing.
            response.Escaped[wavelength] = Math.Max(0, shares.Escaped);
            response.Floor[wavelength] = Math.Max(0, shares.Floor);
            for (int i = firstPart; i < Math.Min(endPart, parts.Count); i++)
            {
                var part = parts[i];
                var inside = light[i];
                double absorbed = transfer.Layer(i).Absorbed(inside);
                double byResin = 1;
                if (part.CellCount > 0)
                {
                    var layer = stack.Layers[part.Layer];
                    double pigment = optics.PigmentAbsorptionPerMm(part.Layer, wavelength);
                    double resin = (1 - layer.VolumeFraction) * stack.Resin.AbsorptionPerMm[wavelength];
                    byResin = resin > 0 ? resin / (resin + pigment) : 0;
                    var row = response.CellFluence.AsSpan(
                        (wavelength * cells) + part.FirstCell,
                        part.CellCount
                    );
                    for (int c = 0; c < row.Length; c++)
                    {
                        row[c] = weights[i].Mean(inside, c);
                    }
                }
                response.Resin[wavelength] += byResin * absorbed;
                response.Pigment[wavelength] += (1 - byResin) * absorbed;
            }
        }

        private double[] SolveGroups()
        {
            var parts = optics.grid.Parts;
            int groups = optics.grid.GroupCount;
            var fluence = new double[groups * groups];
            for (int p = 0; p < parts.Count; p++)
            {
                var part = parts[p];
                if (part.CellCount == 0)
                {
                    continue;
                }
                int firstGroup = part.FirstGroup;
                for (int g = 0; g < part.GroupEdgesMm.Length - 1; g++)
                {
                    transfer.SolveCell(p, part.GroupEdgesMm[g], part.GroupEdgesMm[g + 1], light);
                    AddGroupMeans(fluence.AsSpan((firstGroup + g) * groups, groups));
                }
                CellSource.AddOwnFluence(
                    transfer.Layer(p),
                    part.GroupEdgesMm,
                    fluence.AsSpan((firstGroup * groups) + firstGroup),
                    groups
                );
            }
            return fluence;
        }

        private void AddGroupMeans(Span<double> row)
        {
            var parts = optics.grid.Parts;
            for (int q = 0; q < parts.Count; q++)
            {
                var part = parts[q];
                for (int c = 0; c < part.CellCount; c++)
                {
                    int group = optics.grid.GroupOfCell[part.FirstCell + c];
                    double share = (part.EdgesMm[c + 1] - part.EdgesMm[c]) / optics.grid.GroupWidthMm[group];
                    row[group] += share * weights[q].MeanWithOwn(light[q], c);
                }
            }
        }

        private static Medium MediumOf(PourStack stack, int index, int wavelength)
        {
            var layer = stack.Layers[index];
            double resin = stack.Resin.AbsorptionPerMm[wavelength];
            if (!layer.HasPigment)
            {
                return Medium.Clear(resin);
            }
            double phi = layer.VolumeFraction;
            return new Medium(
                ((1 - phi) * resin) + (phi * layer.Grains!.AbsorptionPerMm[wavelength]),
                phi * layer.Grains.ScatteringPerMm[wavelength],
                layer.Grains.Moments(wavelength)
            );
        }
    }
}
