namespace GlowMix.Optics.Pour;

/// <summary>
/// A pour cut where the packages end, and its pigmented parts cut into cells: fine ones for light and traps, groups of them for
/// light that pigment takes back from itself.
/// </summary>
/// <remarks>
/// Neighbouring parts with the very same emission, the slices of a settled layer, share the cells of a single layer by how much
/// of the pigment is in each: light changes with the pigment passed and not with the millimetres. Each has at least one.
/// </remarks>
internal sealed class PourGrid
{
    private const int CellsPerGroup = 4;
    private const int GroupsBetweenPackages = 2;
    private const int GroupsOverPackages = 4;

    // Solid pigment behind each mm² from which a pour is so opaque that its light falls off within a cell.
    private const double OpaquePigmentMm = 0.6;
    private const int MostTimes = 4;

    // Depths of slices add up to that of their layer, and levels to those of packages, but for rounding.
    private const double RoundingMm = 1e-9;

    private readonly List<Part> parts = [];
    private readonly List<PourCell> cells = [];
    private readonly List<int> groupOfCell = [];
    private readonly List<int> layerOfGroup = [];
    private readonly List<double> groupWidthMm = [];

    /// <param name="stack">What is cut.</param>
    /// <param name="fineness">Times as many cells and groups as a prediction takes, to see what they leave out.</param>
    public PourGrid(PourStack stack, int fineness = 1)
    {
        var cuts = CutsOf(stack);
        for (int first = 0; first < cuts.Count; )
        {
            int count = 1;
            while (first + count < cuts.Count && IsOnePigment(stack, cuts[first], cuts[first + count]))
            {
                count++;
            }
            AddRun(stack, cuts.GetRange(first, count), fineness);
            first += count;
        }
        FirstOverPackages = parts.FindIndex(p => p.OverPackages);
        GroupOfCell = [.. groupOfCell];
        LayerOfGroup = [.. layerOfGroup];
        GroupWidthMm = [.. groupWidthMm];
    }

    /// <summary>Homogeneous parts, from the board upwards.</summary>
    public IReadOnlyList<Part> Parts => parts;

    /// <summary>Fine cells of all pigmented parts, from the board upwards.</summary>
    public IReadOnlyList<PourCell> Cells => cells;

    /// <summary>Groups of fine cells.</summary>
    public int GroupCount => layerOfGroup.Count;

    /// <summary>The group of each fine cell.</summary>
    public int[] GroupOfCell { get; }

    /// <summary>The layer of each group.</summary>
    public int[] LayerOfGroup { get; }

    /// <summary>Depth of each group.</summary>
    public double[] GroupWidthMm { get; }

    /// <summary>First part above the packages; −1 where there is none.</summary>
    public int FirstOverPackages { get; }

    private static List<Cut> CutsOf(PourStack stack)
    {
        var cuts = new List<Cut>();
        double level = stack.PackageHeightMm;
        double height = 0;
        for (int layer = 0; layer < stack.Layers.Count; layer++)
        {
            double top = height + stack.Layers[layer].DepthMm;
            if (level > height + RoundingMm && level < top - RoundingMm)
            {
                cuts.Add(new(layer, height, level, OverPackages: false));
                cuts.Add(new(layer, level, top, OverPackages: true));
            }
            else
            {
                cuts.Add(new(layer, height, top, OverPackages: height >= level - RoundingMm));
            }
            height = top;
        }
        return cuts;
    }

    private static bool IsOnePigment(PourStack stack, Cut one, Cut other)
    {
        var (a, b) = (stack.Layers[one.Layer], stack.Layers[other.Layer]);
        return one.OverPackages == other.OverPackages
            && a.HasPigment
            && b.HasPigment
            && ReferenceEquals(a.EmissionPerNm, b.EmissionPerNm)
            && a.Yield == b.Yield;
    }

    private void AddRun(PourStack stack, List<Cut> run, int fineness)
    {
        double pigmentMm = 0;
        foreach (var cut in run)
        {
            pigmentMm += PigmentMm(stack, cut);
        }
        int times = (int)Math.Clamp(Math.Ceiling(pigmentMm / OpaquePigmentMm), 1, MostTimes);
        int mostGroups =
            fineness * times * (run[0].OverPackages ? GroupsOverPackages : GroupsBetweenPackages);
        foreach (var cut in run)
        {
            if (pigmentMm == 0)
            {
                parts.Add(new(cut.Layer, cut.DepthMm, cut.OverPackages, cells.Count, GroupCount, [], []));
                continue;
            }
            double share = PigmentMm(stack, cut) / pigmentMm;
            int groups = Math.Max(1, (int)Math.Round(share * mostGroups));
            int perGroup = Math.Max(1, (int)Math.Round(share * mostGroups * CellsPerGroup / groups));
            AddPigmented(cut, groups, perGroup);
        }
    }

    private static double PigmentMm(PourStack stack, Cut cut)
    {
        var layer = stack.Layers[cut.Layer];
        return layer.HasPigment ? cut.DepthMm * layer.VolumeFraction : 0;
    }

    private void AddPigmented(Cut cut, int groups, int perGroup)
    {
        int count = groups * perGroup;
        var edges = new double[count + 1];
        for (int i = 0; i <= count; i++)
        {
            // Closer at both faces, where light changes fastest with depth.
            edges[i] = cut.DepthMm * (1 - Math.Cos(Math.PI * i / count)) / 2;
        }
        double[] groupEdges = [.. edges.Where((_, i) => i % perGroup == 0)];
        parts.Add(new(cut.Layer, cut.DepthMm, cut.OverPackages, cells.Count, GroupCount, edges, groupEdges));
        for (int i = 0; i < count; i++)
        {
            groupOfCell.Add(GroupCount + (i / perGroup));
            cells.Add(
                new PourCell(cut.Layer, cut.FromMm + edges[i], cut.FromMm + edges[i + 1], cut.OverPackages)
            );
        }
        for (int g = 0; g < groups; g++)
        {
            layerOfGroup.Add(cut.Layer);
            groupWidthMm.Add(groupEdges[g + 1] - groupEdges[g]);
        }
    }

    private readonly record struct Cut(int Layer, double FromMm, double ToMm, bool OverPackages)
    {
        public double DepthMm => ToMm - FromMm;
    }

    /// <summary>A homogeneous part of the pour.</summary>
    /// <param name="Layer">Index of its layer in the stack.</param>
    /// <param name="DepthMm">Its depth.</param>
    /// <param name="OverPackages">Whether it lies above the packages.</param>
    /// <param name="FirstCell">Index of its lowest fine cell.</param>
    /// <param name="FirstGroup">Index of its lowest group.</param>
    /// <param name="EdgesMm">Edges of its fine cells above its lower face; empty without pigment.</param>
    /// <param name="GroupEdgesMm">Edges of their groups.</param>
    internal sealed record Part(
        int Layer,
        double DepthMm,
        bool OverPackages,
        int FirstCell,
        int FirstGroup,
        double[] EdgesMm,
        double[] GroupEdgesMm
    )
    {
        /// <summary>Fine cells.</summary>
        public int CellCount => Math.Max(0, EdgesMm.Length - 1);

        /// <summary>Whether light meets the same in both: one layer of the same mix, as deep, in the same cells.</summary>
        public bool IsLike(Part other) =>
            Layer == other.Layer
            && DepthMm == other.DepthMm
            && OverPackages == other.OverPackages
            && EdgesMm.AsSpan().SequenceEqual(other.EdgesMm);
    }
}
