using System.Numerics;
using System.Runtime.Intrinsics;
using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class FourSpheresTests
{
    [Theory]
    [InlineData(0.001, 0.4, 0.99, 1, 1.5, 0.1)]
    [InlineData(2, 3, 3.999, 4, 1.33, 1e-8)]
    [InlineData(5, 80, 81, 700, 1.1, 0)]
    [InlineData(700, 900, 1300, 2000, 1.1, 1e-7)]
    [InlineData(100, 100, 100, 100, 0.9, 0)]
    [InlineData(1, 10, 30, 100, 10, 10)]
    public void Four_at_a_time_are_the_same_as_one_by_one(
        double x0,
        double x1,
        double x2,
        double x3,
        double n,
        double k
    )
    {
        Assert.SkipUnless(FourSpheres.IsSupported, "This processor has no AVX2 with FMA.");
        Vector256<double> sizes = Vector256.Create(x0, x1, x2, x3);
        int terms = LorenzMie.TermsFor(x3);
        var index = new Complex(n, k);
        var scratch = new Vector256<double>[FourSpheres.ScratchVectors(terms)];
        var orders = new Vector256<double>[FourSpheres.OrderVectors(terms)];
        Vector256<double> lost = FourSpheres.Coefficients(
            sizes,
            index,
            Vector256.Create(2.0),
            scratch,
            orders
        );

        for (int lane = 0; lane < 4; lane++)
        {
            LorenzMie sphere = LorenzMie.SeriesOf(sizes[lane], index);
            double absorption = sphere.Efficiencies().AbsorptionEfficiency;
            double computed = 2 / (sizes[lane] * sizes[lane]) * lost[lane];
            Assert.Equal(absorption, computed, 1e-9 * absorption);
            for (int order = 1; order <= terms; order++)
            {
                bool kept = order <= sphere.TermCount;
                Complex a = kept ? sphere.Electric[order] : 0;
                Complex b = kept ? sphere.Magnetic[order] : 0;
                Complex sum = At(orders, order, 0, lane);
                Complex difference = At(orders, order, 2, lane);
                // Resonances of large clear spheres turn the rounding of x into 1e-10.
                Assert.InRange(
                    (sum - (2 * (a + b))).Magnitude,
                    0,
                    1e-9 * a.Magnitude + 1e-9 * b.Magnitude + 1e-11
                );
                Assert.InRange(
                    (difference - (2 * (a - b))).Magnitude,
                    0,
                    1e-9 * a.Magnitude + 1e-9 * b.Magnitude + 1e-11
                );
            }
        }
    }

    private static Complex At(Vector256<double>[] orders, int order, int part, int lane)
    {
        int at = (FourSpheres.VectorsPerOrder * order) + part;
        return new Complex(orders[at][lane], orders[at + 1][lane]);
    }
}
