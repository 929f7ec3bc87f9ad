using GlowMix.Optics;
using GlowMix.Optics.Slab;

namespace GlowMix.Tests.Optics.Slab;

public class StreamQuadratureTests
{
    [Theory]
    [InlineData(1, 8)]
    [InlineData(1.33, 4)]
    [InlineData(1.5, 8)]
    [InlineData(1.57, 16)]
    [InlineData(1.5, 64)]
    [InlineData(4, 8)]
    public void Weights_integrate_over_the_hemisphere(double index, int nodes)
    {
        var q = StreamQuadrature.For(index, nodes);
        Assert.Equal(2 * nodes, q.Count);
        // The flux exactly, whatever the nodes: étendue is kept through the face.
        Assert.Equal(0.5, q.Weights.Zip(q.Cosines, (w, mu) => w * mu).Sum(), 1e-14);
        Assert.Equal(1, q.Weights.Sum(), nodes == 4 ? 1e-4 : 1e-7);
        Assert.All(q.Cosines, mu => Assert.InRange(mu, 1e-5, 1));
        Assert.All(q.Weights, w => Assert.True(w > 0));
    }

    [Theory]
    [InlineData(1.33)]
    [InlineData(1.5)]
    [InlineData(1.57)]
    public void Face_sends_back_diffuse_light_as_the_closed_form_says(double index)
    {
        var q = StreamQuadrature.For(index);
        Assert.Equal(Fresnel.DiffuseFromOutside(index), q.FaceReflectanceFromOutside, 2e-7);
        double inside = 0;
        for (int i = 0; i < q.Count; i++)
        {
            inside += 2 * q.Weights[i] * q.Cosines[i] * q.FaceReflectance[i];
        }
        Assert.Equal(Fresnel.DiffuseFromInside(index), inside, 2e-7);
    }

    [Theory]
    [InlineData(1, 64)]
    [InlineData(1.5, 8)]
    [InlineData(1.57, 64)]
    public void Rows_are_orthonormal_on_the_nodes(double index, int nodes)
    {
        var q = StreamQuadrature.For(index, nodes);
        foreach (var rows in new[] { q.EvenBasis, q.OddBasis })
        {
            for (int a = 0; a < rows.Length; a++)
            {
                for (int b = 0; b <= a; b++)
                {
                    double product = 0;
                    for (int i = 0; i < q.Count; i++)
                    {
                        product += rows[a][i] * rows[b][i] * q.Cosines[i];
                    }
                    Assert.Equal(a == b ? 1 : 0, product, 1e-14);
                }
            }
        }
    }

    [Theory]
    [InlineData(1.5, 0)]
    [InlineData(1.5, 7)]
    [InlineData(1.5, 66)]
    [InlineData(0.9, 8)]
    [InlineData(double.NaN, 8)]
    public void An_index_or_a_number_of_nodes_out_of_range_is_refused(double index, int nodes) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StreamQuadrature.For(index, nodes));
}
