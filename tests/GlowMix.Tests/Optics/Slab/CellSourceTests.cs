using GlowMix.Optics.Slab;
using static GlowMix.Tests.Optics.Slab.AddingDoubling;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>Cells that send out light: how much of it every cell meets again.</summary>
public class CellSourceTests
{
    private const double Index = 1.5;

    /// <summary>Optical depth, albedo, g of the emitting layer, from no depth to a thousand, no loss to nearly nothing but loss.</summary>
    public static TheoryData<double, double, double> Layers()
    {
        var rows = new TheoryData<double, double, double>();
        foreach (double tau in new[] { 1e-6, 1e-3, 0.02, 0.3, 3, 30, 300, 1000 })
        {
            foreach (double albedo in new[] { 1e-6, 0.3, 0.97, 0.9999, 1 })
            {
                rows.Add(tau, albedo, 0.93);
            }
            rows.Add(tau, 0.9, 0);
        }
        return rows;
    }

    [Theory]
    [MemberData(nameof(Layers))]
    public void Light_of_a_cell_is_absorbed_lands_on_the_floor_or_leaves(double tau, double albedo, double g)
    {
        var bench = new Bench(tau, albedo, g, Uneven);
        for (int a = 0; a < bench.Cells; a++)
        {
            double absorbed = bench.AbsorbedElsewhere[a];
            for (int b = 0; b < bench.Cells; b++)
            {
                absorbed += bench.AbsorptionPerMm * bench.WidthMm(b) * bench.Fluence(a, b);
            }
            Assert.Equal(1, absorbed + bench.Shares[a].Escaped + bench.Shares[a].Floor, 1e-11);
        }
    }

    /// <summary>Reciprocity: two cells see each other alike.</summary>
    [Theory]
    [MemberData(nameof(Layers))]
    public void Two_cells_see_each_other_alike(double tau, double albedo, double g)
    {
        var bench = new Bench(tau, albedo, g, Uneven);
        for (int a = 0; a < bench.Cells; a++)
        {
            for (int b = 0; b < bench.Cells; b++)
            {
                double there = bench.Fluence(a, b);
                Assert.InRange(there, -1e-14, 1e3);
                Assert.Equal(there, bench.Fluence(b, a), 1e-14 + (1e-9 * there));
            }
        }
    }

    /// <summary>A cell's light is that of its parts: so the own-cell mean agrees with the means between cells.</summary>
    [Theory]
    [MemberData(nameof(Layers))]
    public void A_cell_is_the_mean_of_its_parts(double tau, double albedo, double g)
    {
        double[] coarse = [0, 0.3, 0.5, 1];
        double[] fine = [0, 0.1, 0.2, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
        int[] firstPart = [0, 3, 7, 12];
        var whole = new Bench(tau, albedo, g, coarse);
        var parts = new Bench(tau, albedo, g, fine);
        for (int a = 0; a < 3; a++)
        {
            for (int b = 0; b < 3; b++)
            {
                double sum = 0;
                int pairs = 0;
                for (int i = firstPart[a]; i < firstPart[a + 1]; i++)
                {
                    for (int j = firstPart[b]; j < firstPart[b + 1]; j++)
                    {
                        sum += parts.Fluence(i, j);
                        pairs++;
                    }
                }
                double expected = whole.Fluence(a, b);
                Assert.Equal(expected, sum / pairs, 1e-13 + (1e-8 * expected));
            }
        }
    }

    /// <summary>Thin cells against emitting planes of an independent adding–doubling code.</summary>
    [Theory]
    [InlineData(0.3, 0.7, 0, 0)]
    [InlineData(3, 0.97, 0.75, 0)]
    [InlineData(6, 1, 0.5, 0)]
    public void Cells_agree_with_emitting_planes_of_adding_and_doubling(
        double tau,
        double albedo,
        double g,
        double rho
    )
    {
        const double Thin = 1e-5;
        double[] edges = [0, 0.25 - Thin, 0.25 + Thin, 0.5 - Thin, 0.5 + Thin, 0.75 - Thin, 0.75 + Thin, 1];
        var bench = new Bench(tau, albedo, g, edges, withNeighbours: false, nodes: 16);
        var reference = new AddingDoubling(Index, nodes: 20);
        var quarter = Stuff.HenyeyGreenstein(tau / 4, albedo, g);
        Stuff[] quarters = [quarter, quarter, quarter, quarter];
        for (int plane = 1; plane <= 3; plane++)
        {
            var answer = reference.FromPlane(plane, rho, quarters);
            int cell = (2 * plane) - 1;
            Assert.Equal(answer.Escaped, bench.Shares[cell].Escaped, 1e-5);
            Assert.Equal(answer.AbsorbedByFloor, bench.Shares[cell].Floor, 1e-5);
            for (int other = 1; other <= 3; other++)
            {
                if (other != plane)
                {
                    double met = bench.Fluence(cell, (2 * other) - 1);
                    Assert.Equal(1, met / answer.FluenceAtFaces[other], 3e-4);
                }
            }
        }
    }

    /// <summary>Hardly any scattering: mean fluence of a slab cell in itself by quadrature of the exponential integral.</summary>
    [Fact]
    public void A_cell_alone_in_an_absorber_meets_what_the_exponential_integral_says()
    {
        // No face above counts: the clear cover absorbs all. Mean over the cell of ½ E₁(|t − t′|) both ways, E₁ under the
        // integral as ∫ exp(−x/μ) dμ/μ: (1/τ²) ∫ (τ − μ (1 − exp(−τ/μ))) dμ.
        const double Tau = 0.7;
        double expected = 0;
        const int Steps = 200000;
        for (int i = 0; i < Steps; i++)
        {
            double mu = (i + 0.5) / Steps;
            expected += (Tau - (mu * (1 - Math.Exp(-Tau / mu)))) / (Tau * Tau * Steps);
        }
        var bench = new Bench(Tau, 1e-7, 0, [0, 1], withNeighbours: true, nodes: 32, coverPerMm: 1e3);
        Assert.Equal(expected, bench.Fluence(0, 0), 1e-6);
    }

    private static double[] Uneven => [0, 1e-4, 0.1, 0.13, 0.5, 0.95, 1];

    /// <summary>The emitting layer of 1 mm, under a clear cover and over another scattering layer.</summary>
    private sealed class Bench
    {
        private readonly double[] edgesMm;
        private readonly double[] fluence;

        public Bench(
            double tau,
            double albedo,
            double g,
            double[] edgesMm,
            bool withNeighbours = true,
            int nodes = 8,
            double coverPerMm = 0.05
        )
        {
            this.edgesMm = edgesMm;
            Cells = edgesMm.Length - 1;
            var medium = Medium.HenyeyGreenstein(tau * (1 - albedo), tau * albedo, g, 128);
            AbsorptionPerMm = medium.AbsorptionPerMm;
            var quadrature = StreamQuadrature.For(Index, nodes);
            var transfer = new StackTransfer(quadrature.Count);
            transfer.Begin(quadrature);
            int layer = withNeighbours ? 1 : 0;
            if (withNeighbours)
            {
                Add(
                    coverPerMm > 1 ? Medium.Clear(coverPerMm) : Medium.HenyeyGreenstein(0.1, 2, 0.8, 128),
                    0.4
                );
            }
            Add(medium, 1);
            if (withNeighbours)
            {
                Add(Medium.Clear(coverPerMm), 0.5);
            }
            transfer.Join();

            var light = SlabSolution.NewLight(transfer);
            var weights = new CellWeights(quadrature.Count, Cells);
            weights.Prepare(transfer.Layer(layer), edgesMm);
            fluence = new double[Cells * Cells];
            Shares = new SourceShares[Cells];
            AbsorbedElsewhere = new double[Cells];
            for (int a = 0; a < Cells; a++)
            {
                Shares[a] = transfer.SolveCell(layer, edgesMm[a], edgesMm[a + 1], light);
                for (int b = 0; b < Cells; b++)
                {
                    fluence[(a * Cells) + b] = weights.MeanWithOwn(light[layer], b);
                }
                for (int i = 0; i < transfer.Count; i++)
                {
                    AbsorbedElsewhere[a] += i == layer ? 0 : transfer.Layer(i).Absorbed(light[i]);
                }
            }
            CellSource.AddOwnFluence(transfer.Layer(layer), edgesMm, fluence, Cells);

            void Add(Medium of, double depthMm)
            {
                var modes = new LayerModes(quadrature.Count);
                modes.Solve(of, quadrature);
                transfer.Add(modes, depthMm);
            }
        }

        public int Cells { get; }

        public double AbsorptionPerMm { get; }

        public SourceShares[] Shares { get; }

        public double[] AbsorbedElsewhere { get; }

        public double WidthMm(int cell) => edgesMm[cell + 1] - edgesMm[cell];

        /// <summary>Mean fluence in a cell per unit that another sends out.</summary>
        public double Fluence(int source, int met) => fluence[(source * Cells) + met];
    }
}
