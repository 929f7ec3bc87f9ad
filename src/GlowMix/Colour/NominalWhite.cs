using System.Collections.Immutable;
using GlowMix.Spectra;

namespace GlowMix.Colour;

/// <summary>A white by its trade name (2700 to 6500 K), with the quadrangle inside which it may lie.</summary>
/// <remarks>
/// ANSI C78.377, editions 2008 and 2015: centre and corners in CIE 1931 x, y. The quadrangles reach 0.006 in Duv to either
/// side; in the print some corners of neighbours are 0.0002 apart, so a colour on a common edge may lie in both or neither.
/// </remarks>
public sealed class NominalWhite
{
    private static readonly Lazy<ImmutableArray<NominalWhite>> Whites2008 = new(() =>
        Read(NominalWhiteEdition.Ansi2008, "ansi_c78_377_2008_quadrangles")
    );

    private static readonly Lazy<ImmutableArray<NominalWhite>> Whites2015 = new(() =>
        Read(NominalWhiteEdition.Ansi2015, "ansi_c78_377_2015_quadrangles")
    );

    private NominalWhite(
        NominalWhiteEdition edition,
        int nominalCctK,
        Chromaticity centre,
        ImmutableArray<Chromaticity> corners
    ) => (Edition, NominalCctK, Centre, Corners) = (edition, nominalCctK, centre, corners);

    /// <summary>The edition that draws this quadrangle.</summary>
    public NominalWhiteEdition Edition { get; }

    /// <summary>The name: 2700, 3000, 3500, 4000, 4500, 5000, 5700 or 6500 K.</summary>
    public int NominalCctK { get; }

    /// <summary>Centre of the quadrangle.</summary>
    public Chromaticity Centre { get; }

    /// <summary>The four corners in order round the quadrangle.</summary>
    public ImmutableArray<Chromaticity> Corners { get; }

    /// <summary>The eight whites of an edition, warmest first.</summary>
    public static ImmutableArray<NominalWhite> All(NominalWhiteEdition edition) =>
        edition switch
        {
            NominalWhiteEdition.Ansi2008 => Whites2008.Value,
            NominalWhiteEdition.Ansi2015 => Whites2015.Value,
            _ => throw new ArgumentOutOfRangeException(nameof(edition), edition, "No such edition."),
        };

    /// <summary>
    /// The white whose quadrangle holds a colour, else the one whose centre is nearest in CIE 1960 u, v, where
    /// CCT is defined, told as not inside.
    /// </summary>
    public static (NominalWhite White, bool IsInside) Nearest(
        Chromaticity chromaticity,
        NominalWhiteEdition edition = NominalWhiteEdition.Ansi2015
    )
    {
        ImmutableArray<NominalWhite> whites = All(edition);
        NominalWhite? around = whites.FirstOrDefault(white => white.Contains(chromaticity));
        return around is not null
            ? (around, true)
            : (whites.MinBy(white => ColourDifference.Uv1960(white.Centre, chromaticity))!, false);
    }

    /// <summary>The quadrangle holds a colour; its edges belong to it.</summary>
    public bool Contains(Chromaticity chromaticity)
    {
        bool left = true;
        bool right = true;
        for (int i = 0; i < Corners.Length; i++)
        {
            Chromaticity from = Corners[i];
            Chromaticity to = Corners[(i + 1) % Corners.Length];
            double side =
                ((to.X - from.X) * (chromaticity.Y - from.Y)) - ((to.Y - from.Y) * (chromaticity.X - from.X));
            left &= side >= 0;
            right &= side <= 0;
        }
        return left || right;
    }

    private static ImmutableArray<NominalWhite> Read(NominalWhiteEdition edition, string file)
    {
        ShippedTable table = ShippedTable.Read($"cie/{file}");
        var whites = ImmutableArray.CreateBuilder<NominalWhite>(table.Count);
        for (int row = 0; row < table.Count; row++)
        {
            whites.Add(
                new(
                    edition,
                    (int)table["nominal_cct_k"][row],
                    Point(row, "x_centre", "y_centre"),
                    [
                        Point(row, "x1", "y1"),
                        Point(row, "x2", "y2"),
                        Point(row, "x3", "y3"),
                        Point(row, "x4", "y4"),
                    ]
                )
            );
        }
        return whites.MoveToImmutable();

        Chromaticity Point(int row, string x, string y) => Chromaticity.FromXy(table[x][row], table[y][row]);
    }
}
