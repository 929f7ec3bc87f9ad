using GlowMix.Optics;
using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Tests.Optics.Slab;

/// <summary>
/// The same slab by another road: adding and doubling (van de Hulst 1980) of thin layers. Shares nothing with the solver but
/// Fresnel's equations: other nodes (cone mapped by μ = μc + (1 − μc) t²), plain radiances as unknowns, plain Legendre sums, a
/// diamond start (Wiscombe 1976) and a library's matrices.
/// </summary>
internal sealed class AddingDoubling
{
    /// <summary>Weight of the node that only carries the beam: enough to hold its radiance, too little to be seen by the rest.</summary>
    private const double BeamWeight = 1e-13;

    // Small matrices on a busy machine: sharing them out among threads costs more than it brings.
    static AddingDoubling() => MathNet.Numerics.Control.UseSingleThread();

    private readonly double index;
    private readonly int moments;
    private readonly double[] cosines;
    private readonly double[] weights;
    private readonly double[] face;
    private readonly Dictionary<Stuff, (Matrix<double>, Matrix<double>)> doubled = [];

    /// <param name="index">Refractive index over air.</param>
    /// <param name="nodes">Gauss nodes beyond the critical angle, and as many in the cone.</param>
    /// <param name="beamCosine">Cosine in air of a beam that may be asked for.</param>
    public AddingDoubling(double index, int nodes, double beamCosine = 1)
    {
        this.index = index;
        // A polynomial of degree l in μ has degree 2 l in t: with so many moments every product with 1 is integrated exactly.
        moments = nodes - 1;
        double critical = Math.Sqrt(1 - (1 / (index * index)));
        var rule = new GaussLegendreRule(0, 1, nodes);
        var mu = new List<double>();
        var w = new List<double>();
        for (int i = 0; i < nodes; i++)
        {
            double t = rule.Abscissas[i];
            mu.Add(critical + ((1 - critical) * t * t));
            w.Add((1 - critical) * 2 * t * rule.Weights[i]);
            if (critical > 0)
            {
                mu.Add(critical * t);
                w.Add(critical * rule.Weights[i]);
            }
        }
        double beamInside = Math.Sqrt(1 - ((1 - (beamCosine * beamCosine)) / (index * index)));
        mu.Add(beamInside);
        w.Add(BeamWeight);
        cosines = [.. mu];
        weights = [.. w];
        face = [.. mu.Select(c => Fresnel.Reflectance(c, 1 / index))];
    }

    public Answer FromSky(double floor, params Stuff[] layers) => Solve(floor, layers, Light.Sky, -1);

    public Answer FromFloor(double floor, params Stuff[] layers) => Solve(floor, layers, Light.Floor, -1);

    public Answer FromBeam(double floor, params Stuff[] layers) => Solve(floor, layers, Light.Beam, -1);

    /// <summary>One unit, evenly in all directions, from the plane above so many layers.</summary>
    public Answer FromPlane(int layersBelow, double floor, params Stuff[] layers) =>
        Solve(floor, layers, Light.Plane, layersBelow);

    private Answer Solve(double floor, Stuff[] layers, Light light, int plane)
    {
        int n = cosines.Length;
        double fromFloor = light == Light.Floor ? 1 / Math.PI : 0;
        var emitted = Vector<double>.Build.Dense(
            n,
            i => light == Light.Plane && weights[i] > BeamWeight ? 1 / (4 * Math.PI * cosines[i]) : 0
        );
        var one = Matrix<double>.Build.DenseIdentity(n);
        var thick = layers.Select(Double).ToArray();
        // Seen from above each face between layers, from the floor upwards: what is sent back, and what comes up by itself.
        var back = new Matrix<double>[layers.Length + 1];
        var up = new Vector<double>[layers.Length + 1];
        back[0] = Matrix<double>.Build.Dense(n, n, (_, j) => floor * 2 * weights[j] * cosines[j]);
        up[0] = Vector<double>.Build.Dense(n, fromFloor);
        Emit(0);
        for (int i = 0; i < layers.Length; i++)
        {
            var (r, t) = thick[i];
            var loop = (one - (back[i] * r)).LU();
            back[i + 1] = r + (t * loop.Solve(back[i] * t));
            up[i + 1] = t * loop.Solve(up[i]);
            Emit(i + 1);
        }

        var entering = Vector<double>.Build.Dense(
            n,
            i =>
                light switch
                {
                    Light.Sky => index * index * (1 - face[i]) / Math.PI,
                    Light.Beam when i == n - 1 => (1 - face[i]) / (2 * Math.PI * cosines[i] * weights[i]),
                    _ => 0,
                }
        );
        var mirror = Matrix<double>.Build.DenseOfDiagonalArray(face);
        int top = layers.Length;
        var rising = (one - (back[top] * mirror)).LU().Solve((back[top] * entering) + up[top]);
        var falling = entering + (mirror * rising);
        double escaped = FluxOf(rising - (mirror * rising));
        escaped += light switch
        {
            Light.Sky => Fresnel.DiffuseFromOutside(index),
            Light.Beam => face[n - 1],
            _ => 0,
        };
        var fluence = new double[top + 1];
        fluence[top] = FluenceOf(rising + falling);
        for (int i = top - 1; i >= 0; i--)
        {
            var (r, t) = thick[i];
            // An emitting plane at the upper face sends its share down into this layer.
            var into = i + 1 == plane ? falling + emitted : falling;
            falling = (one - (r * back[i])).LU().Solve((t * into) + (r * up[i]));
            rising = (back[i] * falling) + up[i];
            fluence[i] = FluenceOf(rising + falling);
        }
        return new Answer(escaped, (1 - floor) * FluxOf(falling), fluence);

        void Emit(int at)
        {
            if (at == plane)
            {
                up[at] += (back[at] * emitted) + emitted;
            }
        }
    }

    /// <summary>Reflection and transmission of a whole layer.</summary>
    private (Matrix<double> Reflection, Matrix<double> Transmission) Double(Stuff stuff)
    {
        if (doubled.TryGetValue(stuff, out var known))
        {
            return known;
        }
        int n = cosines.Length;
        double peak = stuff.Moment(moments + 1);
        double depth = stuff.OpticalDepth * (1 - (stuff.Albedo * peak));
        double albedo = stuff.Albedo * (1 - peak) / (1 - (stuff.Albedo * peak));
        int doublings = 0;
        for (double smallest = cosines.Min(); depth > 0.005 * smallest; doublings++)
        {
            depth /= 2;
        }

        var legendre = cosines.Select(mu => Legendre(mu, moments)).ToArray();
        var forward = Matrix<double>.Build.Dense(n, n, (i, j) => Scattered(i, j, 1));
        var backward = Matrix<double>.Build.Dense(n, n, (i, j) => Scattered(i, j, -1));
        var one = Matrix<double>.Build.DenseIdentity(n);
        var per = Matrix<double>.Build.DenseOfDiagonalArray([.. cosines.Select(mu => depth / 2 / mu)]);
        var a = per * (one - forward);
        var b = per * backward;
        var sum = (one + a - b).LU().Solve(one - a + b);
        var difference = (one + a + b).LU().Solve(one - a - b);
        var r = (sum - difference) / 2;
        var t = (sum + difference) / 2;
        for (int k = 0; k < doublings; k++)
        {
            var through = (one - (r * r)).LU().Solve(t);
            r += t * r * through;
            t *= through;
        }
        doubled.Add(stuff, (r, t));
        return (r, t);

        double Scattered(int i, int j, int sign)
        {
            double p = 0;
            for (int l = moments; l >= 0; l--)
            {
                double chi = (stuff.Moment(l) - peak) / (1 - peak);
                p += ((2 * l) + 1) * chi * legendre[i][l] * legendre[j][l] * (l % 2 == 0 ? 1 : sign);
            }
            return albedo / 2 * p * weights[j];
        }
    }

    private double FluxOf(Vector<double> radiance)
    {
        double sum = 0;
        for (int i = 0; i < cosines.Length; i++)
        {
            sum += Math.Tau * weights[i] * cosines[i] * radiance[i];
        }
        return sum;
    }

    private double FluenceOf(Vector<double> radiance)
    {
        double sum = 0;
        for (int i = 0; i < cosines.Length; i++)
        {
            sum += Math.Tau * weights[i] * radiance[i];
        }
        return sum;
    }

    private static double[] Legendre(double x, int highest)
    {
        var p = new double[highest + 1];
        p[0] = 1;
        p[1] = x;
        for (int l = 1; l < highest; l++)
        {
            p[l + 1] = ((((2 * l) + 1) * x * p[l]) - (l * p[l - 1])) / (l + 1);
        }
        return p;
    }

    private enum Light
    {
        Sky,
        Floor,
        Beam,
        Plane,
    }

    /// <summary>A homogeneous layer.</summary>
    /// <param name="OpticalDepth">Extinction times depth.</param>
    /// <param name="Albedo">Scattered share of the extinction.</param>
    /// <param name="Moment">Legendre moment of the phase function of an order, 1 for order 0.</param>
    public sealed record Stuff(double OpticalDepth, double Albedo, Func<int, double> Moment)
    {
        public static Stuff HenyeyGreenstein(double opticalDepth, double albedo, double g) =>
            new(opticalDepth, albedo, l => Math.Pow(g, l));
    }

    /// <summary>Where a unit of light went.</summary>
    /// <param name="Escaped">Into the air, the face's own reflection included.</param>
    /// <param name="AbsorbedByFloor">Kept by the floor.</param>
    /// <param name="FluenceAtFaces">At the floor, between the layers, under the face.</param>
    public sealed record Answer(double Escaped, double AbsorbedByFloor, double[] FluenceAtFaces);
}
