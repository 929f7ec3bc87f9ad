using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace GlowMix.Optics.Grains;

/// <summary>
/// How much each product of two Mie coefficients of orders n and n′ = n + d adds to each Legendre moment:
/// (2n + 1)(2n′ + 1) times the squared 3j symbol (l n n′; 0 1 −1), twice that for d &gt; 0, since −d gives the same. Depends on
/// nothing but the orders, so that one table serves every wavelength.
/// </summary>
/// <remarks>
/// Ten megabytes for large grains, and read once for two wavelengths: laid out in the order of reading. Blocks of eight n; in each, quads
/// of four moments of the same parity, the highest first; in each, n; in each, d by fours; in each, the four moments.
/// </remarks>
internal sealed unsafe class CouplingTable : IDisposable
{
    /// <summary>Orders n in a block.</summary>
    public const int BlockOrders = 8;

    private const int Lanes = 4;
    private const nuint Alignment = 64;

    private readonly Quad[] quads;
    private readonly int[] quadOf;
    private readonly int blockVectors;
    private Vector256<double>* weights;

    /// <param name="terms">Highest order n.</param>
    /// <param name="highestMoment">Highest order l.</param>
    public CouplingTable(int terms, int highestMoment)
    {
        HighestMoment = highestMoment;
        RowVectors = (highestMoment / Lanes) + 1;
        quads = [.. Quads(highestMoment)];
        quadOf =
        [
            .. Enumerable.Range(0, highestMoment + 1).Select(l => Array.FindIndex(quads, q => q.Holds(l))),
        ];
        blockVectors = quads[^1].Start + quads[^1].Vectors;
        int blocks = (terms / BlockOrders) + 1;
        weights = (Vector256<double>*)
            NativeMemory.AlignedAlloc(
                (nuint)blocks * (nuint)blockVectors * (nuint)sizeof(Vector256<double>),
                Alignment
            );
        Parallel.For(0, blocks, Fill);
    }

    /// <summary>Highest moment.</summary>
    public int HighestMoment { get; }

    /// <summary>Vectors that the products of one order take: all d from 0 to the highest moment, and zeros up to a multiple of four.</summary>
    public int RowVectors { get; }

    /// <summary>Number of vectors that <see cref="AddBlock"/> adds to.</summary>
    public int QuadCount => quads.Length;

    /// <summary>What the products of one order give to one moment.</summary>
    /// <param name="n">0 to the number of terms.</param>
    /// <param name="l">0 to the highest moment.</param>
    /// <param name="products">One for each d from 0 to <paramref name="l"/>.</param>
    public double Coupled(int n, int l, ReadOnlySpan<double> products)
    {
        Quad quad = quads[quadOf[l]];
        var place = (double*)(Address(n, 0, quad) + ((quad.Top - l) / 2));
        double sum = 0;
        for (int d = 0; d <= l; d++)
        {
            sum += place[(d / Lanes * Lanes * Lanes) + (d % Lanes)] * products[d];
        }
        return sum;
    }

    /// <summary>Adds what a block of orders gives to the moments, for two wavelengths.</summary>
    /// <param name="block">Which eight orders.</param>
    /// <param name="products">
    /// For each order <see cref="RowVectors"/> vectors for the moments of even l, with Re(a_n a*_n′ + b_n b*_n′) where d is even
    /// and Re(a_n b*_n′ + b_n a*_n′) where it is odd; then as many for those of odd l, with the two exchanged.
    /// </param>
    /// <param name="otherProducts">The same of the other wavelength.</param>
    /// <param name="sums">One vector a quad, to be read by <see cref="Unpack"/>.</param>
    /// <param name="otherSums">The same of the other wavelength.</param>
    public void AddBlock(
        int block,
        Vector256<double>* products,
        Vector256<double>* otherProducts,
        Vector256<double>* sums,
        Vector256<double>* otherSums
    )
    {
        Vector256<double>* weight = weights + ((nint)block * blockVectors);
        for (int q = 0; q < quads.Length; q++)
        {
            nint width = quads[q].Width;
            nint row = (quads[q].Top & 1) * RowVectors;
            Vector256<double> sum0 = default;
            Vector256<double> sum1 = default;
            Vector256<double> sum2 = default;
            Vector256<double> sum3 = default;
            Vector256<double> other0 = default;
            Vector256<double> other1 = default;
            Vector256<double> other2 = default;
            Vector256<double> other3 = default;
            for (int i = 0; i < BlockOrders; i++)
            {
                for (nint j = 0; j < width; j++)
                {
                    Vector256<double> factor = products[row + j];
                    Vector256<double> otherFactor = otherProducts[row + j];
                    sum0 = Fma.MultiplyAdd(factor, weight[0], sum0);
                    other0 = Fma.MultiplyAdd(otherFactor, weight[0], other0);
                    sum1 = Fma.MultiplyAdd(factor, weight[1], sum1);
                    other1 = Fma.MultiplyAdd(otherFactor, weight[1], other1);
                    sum2 = Fma.MultiplyAdd(factor, weight[2], sum2);
                    other2 = Fma.MultiplyAdd(otherFactor, weight[2], other2);
                    sum3 = Fma.MultiplyAdd(factor, weight[3], sum3);
                    other3 = Fma.MultiplyAdd(otherFactor, weight[3], other3);
                    weight += Lanes;
                }
                row += 2 * RowVectors;
            }
            sums[q] += Lane.Sums(sum0, sum1, sum2, sum3);
            otherSums[q] += Lane.Sums(other0, other1, other2, other3);
        }
    }

    /// <summary>The moments, in order of l, from the sums of all blocks.</summary>
    public double[] Unpack(Vector256<double>* sums)
    {
        var moments = new double[HighestMoment + 1];
        for (int q = 0; q < quads.Length; q++)
        {
            for (int slot = 0; slot < Lanes; slot++)
            {
                int l = quads[q].Top - (2 * slot);
                if (l >= 0)
                {
                    moments[l] = sums[q][slot];
                }
            }
        }
        return moments;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        NativeMemory.AlignedFree(weights);
        weights = null;
    }

    private static IEnumerable<Quad> Quads(int highestMoment)
    {
        int start = 0;
        foreach (int highest in (int[])[highestMoment, highestMoment - 1])
        {
            for (int top = highest; top >= 0; top -= 2 * Lanes)
            {
                var quad = new Quad(top, start);
                start += quad.Vectors;
                yield return quad;
            }
        }
    }

    private Vector256<double>* Address(int n, int dVector, Quad quad) =>
        weights
        + ((nint)(n / BlockOrders) * blockVectors)
        + quad.Start
        + (Lanes * (((n % BlockOrders) * quad.Width) + dVector));

    private void Fill(int block)
    {
        new Span<Vector256<double>>(weights + ((nint)block * blockVectors), blockVectors).Clear();
        Span<double> starts = stackalloc double[Lanes * RowVectors];
        for (int n = Math.Max(1, block * BlockOrders); n < (block + 1) * BlockOrders; n++)
        {
            Squared3j.Stretched(n, starts);
            for (int j = 0; j < RowVectors; j++)
            {
                Fill(n, j, starts);
            }
        }
    }

    private void Fill(int n, int dVector, ReadOnlySpan<double> stretched)
    {
        int firstD = Lanes * dVector;
        Span<Vector256<double>> squares = stackalloc Vector256<double>[HighestMoment + 1 - firstD];
        Squared3j.FillFour(n, firstD, stretched, squares);
        Vector256<double> d = Vector256.Create(firstD, firstD + 1, firstD + 2, firstD + 3.0);
        Vector256<double> pair =
            ((2.0 * n) + 1)
            * (Vector256.Create((2.0 * n) + 1) + (2 * d))
            * Vector256.Create(dVector == 0 ? 1 : 2.0, 2, 2, 2);
        foreach (Quad quad in quads)
        {
            if (quad.Top >= firstD)
            {
                Vector256<double>* place = Address(n, dVector, quad);
                for (int slot = 0; slot < Lanes && quad.Top - (2 * slot) >= firstD; slot++)
                {
                    place[slot] = pair * squares[quad.Top - (2 * slot) - firstD];
                }
            }
        }
    }

    // Moments Top, Top − 2, Top − 4 and Top − 6, as far as there are such.
    private readonly record struct Quad(int Top, int Start)
    {
        // Fours of d for each n.
        public int Width => (Top / Lanes) + 1;

        public int Vectors => BlockOrders * Width * Lanes;

        public bool Holds(int l) => l <= Top && l > Top - (2 * Lanes) && int.IsEvenInteger(Top - l);
    }
}
