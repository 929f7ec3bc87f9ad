using GlowMix.Spectra;

namespace GlowMix.Tests.Spectra;

public class DotProductTests
{
    [Fact]
    public void Whole_numbers_multiply_and_add_up_exactly_at_any_length()
    {
        for (int length = 0; length <= 13; length++)
        {
            double[] a = [.. Enumerable.Range(1, length).Select(n => (double)n)];
            double[] b = [.. Enumerable.Range(1, length).Select(n => (double)(n + 1))];
            Assert.Equal(length * (length + 1) * (length + 2) / 3, DotProduct.Of(a, b));
        }
    }

    [Fact]
    public void A_weight_shorter_than_the_row_is_no_weight() =>
        Assert.ThrowsAny<ArgumentException>(() => DotProduct.Of([1, 2, 3], [1, 2]));

    [Fact]
    public void The_integral_with_a_weight_is_that_of_the_product()
    {
        Spectrum a = Spectrum.FromNm(nm => nm / 100);
        Spectrum b = Spectrum.FromNm(nm => 800 - nm);
        Assert.Equal((a * b).IntegralOverNm(), a.IntegralOverNm(b), 1e-6);
    }
}
