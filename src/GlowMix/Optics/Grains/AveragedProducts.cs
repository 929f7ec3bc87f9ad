using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace GlowMix.Optics.Grains;

/// <summary>
/// The products of two Mie coefficients of orders n and n + d, summed over the sizes of a distribution, four sizes in a vector.
/// Scratch memory of one worker; wavelengths follow each other in it.
/// </summary>
/// <remarks>
/// With p = a + b and q = a − b the two kinds of product take two complex products instead of four:
/// Re(a a′* + b b′*) = ½Re(p p′* + q q′*) and Re(a b′* + b a′*) = ½Re(p p′* − q q′*).
/// </remarks>
internal sealed unsafe class AveragedProducts : IDisposable
{
    private const int Lanes = 4;
    private const nuint Alignment = 64;

    private readonly SizeNodes sizes;
    private readonly CouplingTable coupling;
    private readonly int batches;
    private readonly Vector256<double>** series;
    private readonly int* terms;
    private Vector256<double>* memory;
    private Vector256<double>* scratch;
    private Vector256<double>* products;
    private Vector256<double>* sums;
    private int first;
    private long room;

    /// <param name="sizes">Sizes to sum over.</param>
    /// <param name="coupling">Where the sums go.</param>
    public AveragedProducts(SizeNodes sizes, CouplingTable coupling)
    {
        this.sizes = sizes;
        this.coupling = coupling;
        batches = (sizes.Count + Lanes - 1) / Lanes;
        series = (Vector256<double>**)NativeMemory.Alloc((nuint)batches, (nuint)sizeof(void*));
        terms = (int*)NativeMemory.Alloc((nuint)batches, sizeof(int));
    }

    /// <summary>Computes all series of one wavelength.</summary>
    /// <returns>Σ over sizes of the mass share over d³ times x²/2 times the absorption efficiency, 1/µm³.</returns>
    public double Load(Complex index, double sizeParameterPerUm)
    {
        MakeRoom(sizeParameterPerUm);
        double absorbed = 0;
        for (int batch = 0; batch < batches; batch++)
        {
            Vector256<double> diameters = default;
            Vector256<double> weights = default;
            for (int lane = 0; lane < Lanes; lane++)
            {
                // Where the sizes end before the lanes the last one is repeated without weight.
                int i = Math.Min((batch * Lanes) + lane, sizes.Count - 1);
                double d = sizes.DiametersUm[i];
                bool repeated = (batch * Lanes) + lane >= sizes.Count;
                diameters = diameters.WithElement(lane, d);
                weights = weights.WithElement(lane, repeated ? 0 : sizes.MassShares[i] / (d * d * d));
            }
            // The orders past the end stay zero, up to where a block and its partners reach.
            int filled = FourSpheres.OrderVectors(terms[batch]);
            var orders = new Span<Vector256<double>>(series[batch], filled + Margin);
            orders[filled..].Clear();
            Vector256<double> lost = FourSpheres.Coefficients(
                diameters * sizeParameterPerUm,
                index,
                Vector256.Sqrt(0.5 * weights),
                new Span<Vector256<double>>(scratch, FourSpheres.ScratchVectors(terms[batch])),
                orders
            );
            absorbed += Vector256.Sum(weights * lost);
        }
        return absorbed;
    }

    /// <summary>
    /// Sums the products of two loaded wavelengths over the sizes and couples them to the moments: both at once, because reading
    /// the coupling table takes as long as using it.
    /// </summary>
    public static void Couple(AveragedProducts one, AveragedProducts other)
    {
        CouplingTable coupling = one.coupling;
        one.Begin();
        other.Begin();
        int terms = Math.Max(one.Terms, other.Terms);
        for (int block = 0; block * CouplingTable.BlockOrders <= terms; block++)
        {
            one.SumBlock(block);
            other.SumBlock(block);
            coupling.AddBlock(block, one.products, other.products, one.sums, other.sums);
        }
    }

    /// <summary>The moments after <see cref="Couple"/>, not normalised.</summary>
    public double[] Moments() => coupling.Unpack(sums);

    /// <inheritdoc/>
    public void Dispose()
    {
        NativeMemory.AlignedFree(memory);
        NativeMemory.Free(series);
        NativeMemory.Free(terms);
        memory = null;
    }

    private int Terms => terms[batches - 1];

    private int ProductVectors => 2 * CouplingTable.BlockOrders * coupling.RowVectors;

    private int Margin =>
        FourSpheres.VectorsPerOrder * (CouplingTable.BlockOrders + (Lanes * coupling.RowVectors));

    private void MakeRoom(double sizeParameterPerUm)
    {
        long needed = coupling.QuadCount + ProductVectors;
        for (int batch = 0; batch < batches; batch++)
        {
            int last = Math.Min((batch * Lanes) + Lanes - 1, sizes.Count - 1);
            terms[batch] = LorenzMie.TermsFor(sizes.DiametersUm[last] * sizeParameterPerUm);
            needed += FourSpheres.OrderVectors(terms[batch]) + Margin;
        }
        needed += FourSpheres.ScratchVectors(terms[batches - 1]);
        if (needed > room)
        {
            NativeMemory.AlignedFree(memory);
            memory = (Vector256<double>*)
                NativeMemory.AlignedAlloc((nuint)(needed * sizeof(Vector256<double>)), Alignment);
            room = needed;
        }
        sums = memory;
        products = sums + coupling.QuadCount;
        Vector256<double>* next = products + ProductVectors;
        for (int batch = 0; batch < batches; batch++)
        {
            series[batch] = next;
            next += FourSpheres.OrderVectors(terms[batch]) + Margin;
        }
        scratch = next;
    }

    private void Begin()
    {
        new Span<Vector256<double>>(sums, coupling.QuadCount).Clear();
        first = 0;
    }

    // Blocks come in order: sizes whose series has ended are left behind.
    private void SumBlock(int block)
    {
        int firstOrder = block * CouplingTable.BlockOrders;
        while (first < batches && terms[first] < firstOrder)
        {
            first++;
        }
        SumOverSizes(firstOrder);
    }

    // The products of a block of orders. By distance d first: what eight orders and four distances need stays in the innermost
    // cache. Two neighbouring orders together: most coefficients that are read serve both.
    private void SumOverSizes(int firstOrder)
    {
        int start = first;
        int rowVectors = coupling.RowVectors;
        int end = batches;
        Vector256<double>** batchSeries = series;
        Vector256<double>* four = stackalloc Vector256<double>[4];
        for (int j = 0; j < rowVectors; j++)
        {
            nint distance = FourSpheres.VectorsPerOrder * Lanes * j;
            for (int i = 0; i < CouplingTable.BlockOrders; i += 2)
            {
                for (int part = 0; part < 2; part++)
                {
                    // Four vectors an order: Re and Im of p, Re and Im of q.
                    nint own = (FourSpheres.VectorsPerOrder * (firstOrder + i)) + (2 * part);
                    Vector256<double> at0 = default;
                    Vector256<double> at1 = default;
                    Vector256<double> at2 = default;
                    Vector256<double> at3 = default;
                    Vector256<double> next0 = default;
                    Vector256<double> next1 = default;
                    Vector256<double> next2 = default;
                    Vector256<double> next3 = default;
                    for (int batch = start; batch < end; batch++)
                    {
                        Vector256<double>* at = batchSeries[batch] + own;
                        Vector256<double>* other = at + distance;
                        Vector256<double> re = at[0];
                        Vector256<double> im = at[1];
                        Vector256<double> nextRe = at[4];
                        Vector256<double> nextIm = at[5];
                        at0 = Fma.MultiplyAdd(re, other[0], at0);
                        at1 = Fma.MultiplyAdd(re, other[4], at1);
                        next0 = Fma.MultiplyAdd(nextRe, other[4], next0);
                        at2 = Fma.MultiplyAdd(re, other[8], at2);
                        next1 = Fma.MultiplyAdd(nextRe, other[8], next1);
                        at3 = Fma.MultiplyAdd(re, other[12], at3);
                        next2 = Fma.MultiplyAdd(nextRe, other[12], next2);
                        next3 = Fma.MultiplyAdd(nextRe, other[16], next3);
                        at0 = Fma.MultiplyAdd(im, other[1], at0);
                        at1 = Fma.MultiplyAdd(im, other[5], at1);
                        next0 = Fma.MultiplyAdd(nextIm, other[5], next0);
                        at2 = Fma.MultiplyAdd(im, other[9], at2);
                        next1 = Fma.MultiplyAdd(nextIm, other[9], next1);
                        at3 = Fma.MultiplyAdd(im, other[13], at3);
                        next2 = Fma.MultiplyAdd(nextIm, other[13], next2);
                        next3 = Fma.MultiplyAdd(nextIm, other[17], next3);
                    }
                    four[part] = Lane.Sums(at0, at1, at2, at3);
                    four[2 + part] = Lane.Sums(next0, next1, next2, next3);
                }
                for (int neighbour = 0; neighbour < 2; neighbour++)
                {
                    Vector256<double> p = four[2 * neighbour];
                    Vector256<double> q = four[(2 * neighbour) + 1];
                    Vector256<double> same = p + q;
                    Vector256<double> crossed = p - q;
                    Vector256<double>* row = products + (2 * (i + neighbour) * rowVectors);
                    row[j] = Avx.Blend(same, crossed, 0b1010);
                    row[rowVectors + j] = Avx.Blend(crossed, same, 0b1010);
                }
            }
        }
    }
}
