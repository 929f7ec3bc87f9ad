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
    public static PourOptics Of(PourStack stack, bool withGlow = true)
    {
        ArgumentNullException.ThrowIfNull(stack);
        return OfDepths([stack], withGlow)[0];
    }

    /// <summary>
    /// Solves pours of the same layers at other depths. Diffusing modes do not depend on depth: they are worked out once for all
    /// of them, layers that keep their depth from one pour to the next once for both, and every pour comes out as if it had been
    /// solved alone.
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
        var bench = new PourBench(pours);
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
    internal bool GlowsAt(int wavelength) =>
        wavelength % 2 == 0
        && Stack.Layers.Any(l => l.HasPigment && l.EmissionPerNm![wavelength] * WavelengthGrid.StepNm > 1e-4);
}
