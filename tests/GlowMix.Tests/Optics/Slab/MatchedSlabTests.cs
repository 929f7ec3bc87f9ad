using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>
/// Slabs without a face (index 1) under Lambertian light: test problems of Stamnes, Tsay, Wiscombe &amp; Jayaweera 1988 and of the
/// report on their program (Stamnes et al. 2000). Printed figures are answers of a run with so many streams, not of the
/// equation: with as many Gauss nodes (a hemisphere has twice <c>nodes</c> of them) the solver gives them to the last digit, with
/// more it gives the equation's.
/// </summary>
public class MatchedSlabTests
{
    private const int SixteenStreams = 4;
    private const int EightStreams = 2;

    [Fact]
    public void Problem_1c_in_16_streams()
    {
        var fate = Isotropic(SixteenStreams, (0.03125, 0.99)).FromSky;
        Assert.Equal(9.06556e-2, Math.PI * fate.Escaped, 5e-8);
        Assert.Equal(3.04897, Math.PI * fate.AbsorbedByFloor, 5e-6);
        // Printed as the divergence of the net flux, (1 − albedo) × fluence.
        Assert.Equal(6.66870e-2, 0.01 * Math.PI * fate.Fluence(0, 0.03125), 5e-8);
        Assert.Equal(5.88936e-2, 0.01 * Math.PI * fate.Fluence(0, 0), 5e-8);
    }

    /// <summary>Exact values: integral equation with E₁, computed for these tests to 1e-10.</summary>
    [Fact]
    public void Problem_1c_converged()
    {
        var fate = Isotropic(48, (0.03125, 0.99)).FromSky;
        Assert.Equal(0.0905577, Math.PI * fate.Escaped, 2e-7);
        Assert.Equal(3.0490729, Math.PI * fate.AbsorbedByFloor, 2e-7);
    }

    [Theory]
    [InlineData(SixteenStreams)]
    [InlineData(32)]
    public void Problem_1f_in_any_order(int nodes)
    {
        var fate = Isotropic(nodes, (32, 0.99)).FromSky;
        Assert.Equal(2.49618, Math.PI * fate.Escaped, 6e-6);
        Assert.Equal(4.60048e-3, Math.PI * fate.AbsorbedByFloor, 6e-9);
        Assert.Equal(1.14239e-1, 0.01 * Math.PI * fate.Fluence(0, 32), 6e-7);
        Assert.Equal(7.93633e-5, 0.01 * Math.PI * fate.Fluence(0, 0), 6e-11);
    }

    /// <summary>
    /// Problems 8 and 9a (Özisik &amp; Shouman 1980; Devaux et al. 1979: names from memory). Layers are listed from the top;
    /// 8-stream figures of a stored run, converged ones of an independent code.
    /// </summary>
    [Fact]
    public void Problem_8a()
    {
        AssertStack([(0.25, 0.5), (0.25, 0.3)], 9.29633e-2, 5.13132e-1, 9.30102e-2, 5.128116e-1);
    }

    [Fact]
    public void Problem_8b()
    {
        AssertStack([(0.25, 0.8), (0.25, 0.95)], 2.25136e-1, 6.50417e-1, 2.25247e-1, 6.502629e-1);
    }

    /// <summary>What reaches the bottom is not printed for 8 streams.</summary>
    [Fact]
    public void Problem_8c()
    {
        AssertStack([(1, 0.8), (2, 0.95)], 3.78578e-1, null, 3.785766e-1, 1.599894e-1);
    }

    [Fact]
    public void Problem_9a()
    {
        AssertStack(
            [(1, 0.65), (2, 0.70), (3, 0.75), (4, 0.80), (5, 0.85), (6, 0.90)],
            2.27973e-1,
            6.16968e-7,
            2.279522e-1,
            6.171350e-7
        );
    }

    private static void AssertStack(
        (double Tau, double Albedo)[] fromTop,
        double up8,
        double? down8,
        double up,
        double down
    )
    {
        (double, double)[] fromFloor = [.. fromTop.Reverse()];
        var coarse = Isotropic(EightStreams, fromFloor).FromSky;
        Assert.Equal(up8, coarse.Escaped, LastDigit(up8, 6));
        if (down8 is { } printed)
        {
            Assert.Equal(printed, coarse.AbsorbedByFloor, LastDigit(printed, 6));
        }
        var fine = Isotropic(32, fromFloor).FromSky;
        Assert.Equal(up, fine.Escaped, LastDigit(up, 6));
        Assert.Equal(down, fine.AbsorbedByFloor, LastDigit(down, 7));
    }

    /// <summary>Half a unit, and a hair, of the last of so many printed digits.</summary>
    private static double LastDigit(double value, int digits) =>
        0.51 * Math.Pow(10, Math.Floor(Math.Log10(value)) + 1 - digits);

    private static SlabSolution Isotropic(int nodes, params (double Tau, double Albedo)[] fromFloor)
    {
        Layer[] layers =
        [
            .. fromFloor.Select(l => new Layer(
                new Medium(1 - l.Albedo, l.Albedo, new double[] { 1 }),
                l.Tau
            )),
        ];
        return SlabSolution.Of(new LayerStack(1, layers), nodes: nodes);
    }
}
