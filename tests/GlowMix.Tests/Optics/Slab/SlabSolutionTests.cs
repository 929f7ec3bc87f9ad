using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

public class SlabSolutionTests
{
    private static readonly double[] Depths = [0, 1e-9, 1e-3, 0.1, 1, 10, 100, 1000];
    private static readonly double[] Albedos = [0, 1e-6, 0.3, 0.9, 0.999, 0.999999, 1];

    public static TheoryData<double, double, double, double> Extremes()
    {
        var rows = new TheoryData<double, double, double, double>();
        foreach (double depth in Depths)
        {
            foreach (double albedo in Albedos)
            {
                rows.Add(depth, albedo, 0.9, 1.5);
                rows.Add(depth, albedo, 0, 1);
                rows.Add(depth, albedo, 0.99, 1.41);
                rows.Add(depth, albedo, -0.3, 1.57);
            }
        }
        return rows;
    }

    [Theory]
    [MemberData(nameof(Extremes))]
    public void No_light_is_lost_or_made(double depth, double albedo, double g, double index)
    {
        var slab = Solve(depth, albedo, g, index, floor: 0.4);
        foreach (var fate in new[] { slab.FromSky, slab.FromFloor })
        {
            // A floor source's own floor takes back what returns; all else is shares of the unit sent out.
            Assert.Equal(1, fate.Escaped + fate.AbsorbedByFloor + fate.AbsorbedInLayers.Sum(), 1e-9);
        }
    }

    /// <summary>Values of two independent codes: checks/optics, 'one layer, HG, Fresnel top to air, Lambertian floor'.</summary>
    [Theory]
    [InlineData(1, 0.9, 0.75, 1.5, 0, 0.11020, 0.13255, 0.75724)]
    [InlineData(4, 0.99, 0.9, 1.5, 0.85, 0.57295, 0.20946, 0.21759)]
    [InlineData(15, 0.97, 0.95, 1.41, 0, 0.12837, 0.52636, 0.34527)]
    public void Diffuse_light(
        double tau,
        double albedo,
        double g,
        double n,
        double rho,
        double r,
        double layer,
        double into
    )
    {
        var fate = Solve(tau, albedo, g, n, rho).FromSky;
        Assert.Equal(r, fate.Escaped, 1e-4);
        Assert.Equal(layer, fate.AbsorbedInLayers[0], 1e-4);
        Assert.Equal(into, fate.AbsorbedByFloor, 1e-4);
    }

    [Theory]
    [InlineData(15, 0.97, 0.95, 1.41, 0, 0.17367, 0.60634, 0.21999)]
    [InlineData(4, 0.99, 0.9, 1.5, 0.85, 0.64471, 0.20997, 0.14533)]
    public void Floor_light(
        double tau,
        double albedo,
        double g,
        double n,
        double rho,
        double o,
        double layer,
        double into
    )
    {
        var fate = Solve(tau, albedo, g, n, rho).FromFloor;
        Assert.Equal(o, fate.Escaped, 1e-4);
        Assert.Equal(layer, fate.AbsorbedInLayers[0], 1e-4);
        Assert.Equal(into, fate.AbsorbedByFloor, 1e-4);
    }

    [Theory]
    [InlineData(1, 0.9, 0.75, 1.5, 0, 0.14995)]
    [InlineData(4, 0.99, 0.9, 1.5, 0.85, 0.58253)]
    [InlineData(15, 0.97, 0.95, 1.41, 0, 0.14877)]
    [InlineData(0.3, 0.7, 0, 1.55, 0.85, 0.41720)]
    public void Escape(double tau, double albedo, double g, double n, double rho, double share)
    {
        var slab = Solve(tau, albedo, g, n, rho);
        Assert.Equal(share, slab.EscapeShare(0, 0.5), 1e-4);
        double mean = 0;
        for (int i = 0; i < 1000; i++)
        {
            mean += slab.EscapeShare(0, 0.4 + (0.2 * (i + 0.5) / 1000)) / 1000;
        }
        Assert.Equal(mean, slab.OfEmittingCell(0, 0.4, 0.6).Escaped, 1e-6);
    }

    private static SlabSolution Solve(
        double tau,
        double albedo,
        double g,
        double index,
        double floor,
        int nodes = 8
    ) =>
        SlabSolution.Of(
            new LayerStack(
                index,
                new Layer(Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 300), 1)
            ),
            floor,
            nodes
        );
}
