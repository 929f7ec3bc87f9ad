namespace GlowMix.Optics.Grains;

/// <summary>
/// How much each product of two Mie coefficients of orders n and n′ = n + d adds to each Legendre moment:
/// (2n + 1)(2n′ + 1) times the squared 3j symbol (l n n′; 0 1 −1), twice that for d &gt; 0, since −d gives the same. Depends on
/// nothing but the orders, so that one table serves every wavelength.
/// </summary>
internal sealed class CouplingTable
{
    private readonly double[] weights;
    private readonly int[] rowStart;

    /// <param name="terms">Highest order n.</param>
    /// <param name="highestMoment">Highest order l.</param>
    public CouplingTable(int terms, int highestMoment)
    {
        HighestMoment = highestMoment;
        RowWidth = Padded(highestMoment + 1);
        rowStart = new int[highestMoment + 2];
        for (int l = 0; l <= highestMoment; l++)
        {
            rowStart[l + 1] = rowStart[l] + Padded(l + 1);
        }
        weights = new double[(terms + 1) * rowStart[^1]];
        Parallel.For(1, terms + 1, Fill);
    }

    /// <summary>Highest moment.</summary>
    public int HighestMoment { get; }

    /// <summary>Width of a row of products: all d from 0 to the highest moment, and zeros up to a multiple of four.</summary>
    public int RowWidth { get; }

    /// <summary>Adds the share of order n to each moment.</summary>
    /// <param name="n">1 to the number of terms.</param>
    /// <param name="productsEven">
    /// For moments of even l, the product for each d, <see cref="RowWidth"/> of them: Re(a_n a*_n′ + b_n b*_n′) where d is even,
    /// Re(a_n b*_n′ + b_n a*_n′) where it is odd.
    /// </param>
    /// <param name="productsOdd">The same for moments of odd l: the other way round.</param>
    /// <param name="moments">Not normalised, l from 0.</param>
    public void AddOrder(
        int n,
        ReadOnlySpan<double> productsEven,
        ReadOnlySpan<double> productsOdd,
        Span<double> moments
    )
    {
        for (int l = 0; l <= HighestMoment; l++)
        {
            ReadOnlySpan<double> row = Row(n, l);
            ReadOnlySpan<double> products = int.IsEvenInteger(l) ? productsEven : productsOdd;
            double sum = 0;
            for (int d = 0; d <= l; d++)
            {
                sum += row[d] * products[d];
            }
            moments[l] += sum;
        }
    }

    private static int Padded(int width) => (width + 3) & ~3;

    private Span<double> Row(int n, int l) =>
        weights.AsSpan((n * rowStart[^1]) + rowStart[l], rowStart[l + 1] - rowStart[l]);

    private void Fill(int n)
    {
        Span<double> squares = stackalloc double[HighestMoment + 1];
        for (int d = 0; d <= HighestMoment; d++)
        {
            Squared3j.Fill(n, d, squares);
            double pair = (d == 0 ? 1 : 2) * ((2.0 * n) + 1) * ((2.0 * (n + d)) + 1);
            for (int l = d; l <= HighestMoment; l++)
            {
                Row(n, l)[d] = pair * squares[l];
            }
        }
    }
}
