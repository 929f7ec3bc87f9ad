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
            Assert.Equal(1, fate.Escaped + fate.AbsorbedByFloor + fate.AbsorbedInLayers.Sum(), 1e-12);
        }
    }

    private static SlabSolution Solve(double tau, double albedo, double g, double index, double floor) =>
        SlabSolution.Of(
            new LayerStack(
                index,
                new Layer(Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 300), 1)
            ),
            floor
        );
}
