namespace GlowMix.Optics.Pour;

/// <summary>
/// A pour cut where the packages end, and its pigmented parts cut into cells: fine ones for light and traps, groups of them for
/// light that pigment takes back from itself.
/// </summary>
internal sealed class PourGrid
{
    /// <summary>Fine cells in a group.</summary>
    public const int CellsPerGroup = 4;

    private const int GroupsBetweenPackages = 2;
    private const int GroupsOverPackages = 4;

    public PourGrid(PourStack stack)
    {
        var parts = new List<Part>();
        var cells = new List<PourCell>();
        double height = 0;
        for (int layer = 0; layer < stack.Layers.Count; layer++)
        {
            double top = height + stack.Layers[layer].DepthMm;
            double cut = stack.PackageHeightMm;
            if (cut > height && cut < top)
            {
                AddPart(parts, cells, stack, layer, height, cut, overPackages: false);
                AddPart(parts, cells, stack, layer, cut, top, overPackages: true);
            }
            else
            {
                AddPart(parts, cells, stack, layer, height, top, overPackages: height >= cut);
            }
            height = top;
        }
        Parts = parts;
        Cells = cells;
        FirstOverPackages = parts.FindIndex(p => p.OverPackages);
    }

    /// <summary>Homogeneous parts, from the board upwards.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>Fine cells of all pigmented parts, from the board upwards.</summary>
    public IReadOnlyList<PourCell> Cells { get; }

    /// <summary>Groups of fine cells.</summary>
    public int GroupCount => Cells.Count / CellsPerGroup;

    /// <summary>First part above the packages; −1 where there is none.</summary>
    public int FirstOverPackages { get; }

    private static void AddPart(
        List<Part> parts,
        List<PourCell> cells,
        PourStack stack,
        int layer,
        double fromMm,
        double toMm,
        bool overPackages
    )
    {
        if (!stack.Layers[layer].HasPigment)
        {
            parts.Add(new Part(layer, toMm - fromMm, overPackages, cells.Count, [], []));
            return;
        }
        int count = CellsPerGroup * (overPackages ? GroupsOverPackages : GroupsBetweenPackages);
        var edges = new double[count + 1];
        for (int i = 0; i <= count; i++)
        {
            // Closer at both faces, where light changes fastest with depth.
            edges[i] = (toMm - fromMm) * (1 - Math.Cos(Math.PI * i / count)) / 2;
        }
        parts.Add(
            new Part(
                layer,
                toMm - fromMm,
                overPackages,
                cells.Count,
                edges,
                [.. edges.Where((_, i) => i % CellsPerGroup == 0)]
            )
        );
        for (int i = 0; i < count; i++)
        {
            cells.Add(new PourCell(layer, fromMm + edges[i], fromMm + edges[i + 1], overPackages));
        }
    }

    /// <summary>A homogeneous part of the pour.</summary>
    /// <param name="Layer">Index of its layer in the stack.</param>
    /// <param name="DepthMm">Its depth.</param>
    /// <param name="OverPackages">Whether it lies above the packages.</param>
    /// <param name="FirstCell">Index of its lowest fine cell.</param>
    /// <param name="EdgesMm">Edges of its fine cells above its lower face; empty without pigment.</param>
    /// <param name="GroupEdgesMm">Edges of their groups.</param>
    internal sealed record Part(
        int Layer,
        double DepthMm,
        bool OverPackages,
        int FirstCell,
        double[] EdgesMm,
        double[] GroupEdgesMm
    )
    {
        /// <summary>Fine cells.</summary>
        public int CellCount => Math.Max(0, EdgesMm.Length - 1);
    }
}
