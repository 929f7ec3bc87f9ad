using System.Collections.Immutable;

namespace GlowMix.Materials;

/// <summary>
/// What becomes of light that is sent back onto an LED package: M_ij, watts that leave it again in band i per watt of band j
/// that arrives. The bands are 0 die, 1 green, 2 red; conversion goes to longer bands only, so the matrix is lower
/// triangular; what a column lacks to 1 is lost as heat.
/// </summary>
public sealed class ReturnMatrix
{
    private readonly ImmutableArray<double> rows;

    private ReturnMatrix(ImmutableArray<double> rows) => this.rows = rows;

    /// <summary>One entry.</summary>
    /// <param name="into">Band that leaves.</param>
    /// <param name="from">Band that arrives.</param>
    public double this[int into, int from] => rows[(3 * into) + from];

    /// <summary>The matrix from its six entries.</summary>
    /// <exception cref="ArgumentException">An entry is negative, or a column adds up to more than 1.</exception>
    public static ReturnMatrix From(
        double dieIntoDie,
        double dieIntoGreen,
        double dieIntoRed,
        double greenIntoGreen,
        double greenIntoRed,
        double redIntoRed
    )
    {
        var matrix = new ReturnMatrix([
            dieIntoDie,
            0,
            0,
            dieIntoGreen,
            greenIntoGreen,
            0,
            dieIntoRed,
            greenIntoRed,
            redIntoRed,
        ]);
        for (int from = 0; from < 3; from++)
        {
            // A few last digits of decimal fractions are no excess.
            if (!(matrix.rows.Min() >= 0 && matrix.ColumnSum(from) <= 1 + 1e-9))
            {
                throw new ArgumentException("Entries must be 0 or more and columns add up to 1 at most.");
            }
        }
        return matrix;
    }

    /// <summary>Share of a band's watts that leaves the package again in any band, 0 to 1.</summary>
    public double ColumnSum(int from) => this[0, from] + this[1, from] + this[2, from];

    /// <summary>A copy, [into, from].</summary>
    public double[,] ToArray()
    {
        var array = new double[3, 3];
        for (int into = 0; into < 3; into++)
        {
            for (int from = 0; from < 3; from++)
            {
                array[into, from] = this[into, from];
            }
        }
        return array;
    }
}
