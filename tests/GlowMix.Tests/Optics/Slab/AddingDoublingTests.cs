using GlowMix.Optics.Slab;
using static GlowMix.Tests.Optics.Slab.AddingDoubling;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>The solver against an independent adding–doubling code.</summary>
public class AddingDoublingTests
{
    /// <summary>τ, albedo, g, index, floor.</summary>
    public static TheoryData<double, double, double, double, double> Slabs() =>
        new()
        {
            { 0.05, 0.5, 0, 1.5, 0 },
            { 0.3, 0.7, 0, 1.55, 0.85 },
            { 0.3, 1, 0.9, 1.41, 0.3 },
            { 1, 0.9, 0.75, 1.5, 0 },
            { 1, 0.99, 0.95, 1.5, 0.3 },
            { 1, 0.2, 0.5, 1, 0.5 },
            { 2, 0.95, -0.3, 1.57, 0.85 },
            { 4, 0.99, 0.9, 1.5, 0.85 },
            { 4, 0, 0, 1.5, 0.85 },
            { 5, 1, 0.75, 1, 0 },
            { 8, 0.9999, 0.97, 1.5, 0.94 },
            { 10, 0.999, 0.95, 1.5, 0.3 },
            { 10, 1, 0.97, 1.5, 0 },
            { 15, 0.97, 0.95, 1.41, 0 },
            { 30, 0.9995, 0.8, 1.41, 0 },
            { 60, 0.998, 0.97, 1.57, 0.85 },
            { 60, 0.7, 0.97, 1.33, 0.85 },
        };

    [Theory]
    [MemberData(nameof(Slabs))]
    public void Solver_agrees_with_adding_and_doubling(
        double tau,
        double albedo,
        double g,
        double n,
        double rho
    )
    {
        // 20 nodes: fluxes stable to 1.3e-5 up to g 0.97 (against 28 nodes, and against the solver's own 64).
        var reference = new AddingDoubling(n, nodes: 20);
        var third = Stuff.HenyeyGreenstein(tau / 3, albedo, g);
        Stuff[] thirds = [third, third, third];
        var fromSky = reference.FromSky(rho, thirds);
        var fromFloor = reference.FromFloor(rho, thirds);
        double escapeBelow = reference.FromPlane(1, rho, thirds).Escaped;
        double escapeAbove = reference.FromPlane(2, rho, thirds).Escaped;
        foreach (
            var (nodes, flux, inside, faces) in new[] { (8, 5e-5, 7e-4, 2.5e-3), (16, 2e-5, 1e-4, 2e-3) }
        )
        {
            var slab = SlabSolution.Of(One(tau, albedo, g, n), rho, nodes);
            foreach (var (expected, actual) in new[] { (fromSky, slab.FromSky), (fromFloor, slab.FromFloor) })
            {
                Assert.Equal(expected.Escaped, actual.Escaped, flux);
                Assert.Equal(expected.AbsorbedByFloor, actual.AbsorbedByFloor, flux);
                Assert.Equal(
                    1 - expected.Escaped - expected.AbsorbedByFloor,
                    actual.AbsorbedInLayers[0],
                    flux
                );
                for (int i = 0; i <= 3; i++)
                {
                    // Relative. At a face the light that runs along it counts in full, and of it a cut peak says least.
                    double ratio = actual.Fluence(0, i / 3.0) / expected.FluenceAtFaces[i];
                    Assert.Equal(1, ratio, i is 0 or 3 ? faces : inside);
                }
            }
            Assert.Equal(escapeBelow, slab.EscapeShare(0, 1 / 3.0), flux);
            Assert.Equal(escapeAbove, slab.EscapeShare(0, 2 / 3.0), flux);
        }
    }

    private static LayerStack One(double tau, double albedo, double g, double index) =>
        new(index, new Layer(Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 200), 1));
}
