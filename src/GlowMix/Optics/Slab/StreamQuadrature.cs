using MathNet.Numerics.Integration;

namespace GlowMix.Optics.Slab;

/// <summary>
/// The directions light is followed in, for one refractive index: one set of nodes inside the escape cone, one beyond the
/// critical angle. Immutable; shared by every layer and depth of one resin at one wavelength.
/// </summary>
/// <remarks>
/// Cone nodes are Gauss nodes of the cosine in air, taken inside by Snell's law, with μ dμ = μ′ dμ′ / n²: transmittance is
/// smooth in the outside cosine and has a square-root start in the inside one, and étendue is kept exactly.
/// </remarks>
public sealed class StreamQuadrature
{
    /// <summary>Nodes in the cone, and as many beyond it, of the model's own runs.</summary>
    public const int StandardNodes = 8;

    /// <summary>Moments of the finest quadrature there is.</summary>
    public const int MostMoments = 4 * MostNodes;

    private const int MostNodes = 64;

    private StreamQuadrature(
        double index,
        double[] cosines,
        double[] weights,
        double[] faceReflectance,
        int moments
    )
    {
        Index = index;
        Count = cosines.Length;
        Cosines = cosines;
        Weights = weights;
        FaceReflectance = faceReflectance;
        Moments = moments;
        FluxRoots = [.. cosines.Zip(weights, (mu, w) => Math.Sqrt(w * mu))];
        FluenceRoots = [.. cosines.Zip(weights, (mu, w) => Math.Sqrt(w / mu))];
        InverseCosines = [.. cosines.Select(mu => 1 / mu)];
        EvenBasis = OrthonormalBasis(first: 0);
        OddBasis = OrthonormalBasis(first: 1);
        double entering = 0;
        for (int i = 0; i < Count; i++)
        {
            entering += 2 * index * index * weights[i] * cosines[i] * (1 - faceReflectance[i]);
        }
        FaceReflectanceFromOutside = 1 - entering;
    }

    /// <summary>Refractive index of the medium over that of air.</summary>
    public double Index { get; }

    /// <summary>Nodes in one hemisphere.</summary>
    public int Count { get; }

    /// <summary>Legendre moments of a phase function that these nodes carry; the next one, χ of this order, is cut by delta-M.</summary>
    public int Moments { get; }

    /// <summary>Share of Lambertian light from the air that the face sends back, as these nodes see it.</summary>
    public double FaceReflectanceFromOutside { get; }

    /// <summary>Rising: the eigenvectors keep their last digits when the largest 1/μ comes first (see <see cref="SymmetricEigen"/>).</summary>
    internal double[] Cosines { get; }

    internal double[] Weights { get; }

    /// <summary>Fresnel reflectance of the face from inside, per node.</summary>
    internal double[] FaceReflectance { get; }

    /// <summary>√(w μ): the scale in which reflection and transmission matrices are symmetric.</summary>
    internal double[] FluxRoots { get; }

    /// <summary>√(w / μ): from the scaled sum of both hemispheres to fluence.</summary>
    internal double[] FluenceRoots { get; }

    internal double[] InverseCosines { get; }

    /// <summary>Rows: even Legendre polynomials, orthonormal on the nodes, times 1/√μ.</summary>
    internal double[][] EvenBasis { get; }

    /// <summary>Rows: odd Legendre polynomials, orthonormal on the nodes, times 1/√μ.</summary>
    internal double[][] OddBasis { get; }

    /// <summary>Nodes for a medium.</summary>
    /// <param name="index">Refractive index over that of air, 1 to 4. At 1 there is no face and all nodes are Gauss nodes.</param>
    /// <param name="nodes">Nodes in the cone and as many beyond, an even number from 2 to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static StreamQuadrature For(double index, int nodes = StandardNodes)
    {
        if (nodes is < 2 or > MostNodes || nodes % 2 != 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(nodes),
                nodes,
                "Nodes must be an even number from 2 to 64."
            );
        }
        double critical = Fresnel.CriticalCosine(index);
        int beyond = critical > 0 ? nodes : 0;
        var cosines = new double[2 * nodes];
        var weights = new double[2 * nodes];
        var face = new double[2 * nodes];
        if (beyond > 0)
        {
            var rule = new GaussLegendreRule(0, critical, beyond);
            rule.Abscissas.CopyTo(cosines, 0);
            rule.Weights.CopyTo(weights, 0);
            Array.Fill(face, 1, 0, beyond);
        }
        var cone = new GaussLegendreRule(0, 1, (2 * nodes) - beyond);
        for (int i = 0; i < cone.Order; i++)
        {
            double outside = cone.Abscissas[i];
            double inside = Math.Sqrt(1 - ((1 - outside) * (1 + outside) / (index * index)));
            cosines[beyond + i] = inside;
            weights[beyond + i] = cone.Weights[i] * outside / (index * index * inside);
            face[beyond + i] = Fresnel.Reflectance(outside, index);
        }
        return new StreamQuadrature(index, cosines, weights, face, MomentsFor(index, nodes));
    }

    /// <summary>
    /// How many moments the nodes for a medium carry. Gauss nodes over the whole hemisphere carry as many as there are streams.
    /// Nodes split at the critical angle keep the accuracy of half as many (tried: more bring nothing under diffuse light, and
    /// harm under a beam).
    /// </summary>
    internal static int MomentsFor(double index, int nodes) => index > 1 ? 2 * nodes : 4 * nodes;

    /// <summary>
    /// Legendre polynomials of one parity, made orthonormal on the nodes (twice, so that rounding does not add up). The
    /// scattering operator then has exactly the moments it is given: no light is lost in a conservative layer and g is
    /// kept, however coarse the nodes.
    /// </summary>
    private double[][] OrthonormalBasis(int first)
    {
        var rows = new double[Moments / 2][];
        for (int r = 0; r < rows.Length; r++)
        {
            int order = first + (2 * r);
            var row = new double[Count];
            for (int i = 0; i < Count; i++)
            {
                row[i] = Math.Sqrt(Weights[i]) * Legendre(order, Cosines[i]);
            }
            for (int pass = 0; pass < 2; pass++)
            {
                for (int earlier = 0; earlier < r; earlier++)
                {
                    RowMath.AddScaled(row, rows[earlier], -RowMath.Dot(row, rows[earlier]));
                }
                RowMath.SetScaled(row, row, 1 / Math.Sqrt(RowMath.Dot(row, row)));
            }
            rows[r] = row;
        }
        foreach (var row in rows)
        {
            for (int i = 0; i < Count; i++)
            {
                row[i] /= Math.Sqrt(Cosines[i]);
            }
        }
        return rows;
    }

    private static double Legendre(int order, double x)
    {
        double before = 1;
        double value = order == 0 ? 1 : x;
        for (int l = 2; l <= order; l++)
        {
            (before, value) = (value, ((((2 * l) - 1) * x * value) - ((l - 1) * before)) / l);
        }
        return value;
    }
}
