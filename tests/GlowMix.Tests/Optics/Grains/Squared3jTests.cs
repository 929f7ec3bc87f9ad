using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class Squared3jTests
{
    // Edmonds (1957), eq. 3.7.7: the symbols of all l are a unit vector, each counted 2l + 1 times.
    [Theory]
    [InlineData(1, 0)]
    [InlineData(3, 2)]
    [InlineData(16, 0)]
    [InlineData(10, 12)]
    [InlineData(40, 32)]
    [InlineData(120, 7)]
    public void All_orders_together_make_one(int n, int d)
    {
        var squares = new double[(2 * n) + d + 3];
        Squared3j.Fill(n, d, squares);

        double sum = 0;
        for (int l = 0; l < squares.Length; l++)
        {
            sum += ((2 * l) + 1) * squares[l];
        }
        Assert.Equal(1, sum, 1e-12);
        Assert.All(squares[..d], square => Assert.Equal(0, square));
        Assert.All(squares[((2 * n) + d + 1)..], square => Assert.Equal(0, square));
    }

    // Closed forms for l = 1 (Edmonds 1957, table 2): (1 n n; 0 1 −1)² = 1/(n(n+1)(2n+1)),
    // (1 n n+1; 0 1 −1)² = n(n+2)/((n+1)(2n+1)(2n+3)). They make the sum for g in Bohren & Huffman (1983).
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(2000)]
    public void The_first_order_is_the_closed_form(int n)
    {
        var squares = new double[2];

        Squared3j.Fill(n, 0, squares);
        Assert.Equal(1, squares[0] * ((2.0 * n) + 1), 1e-14);
        Assert.Equal(1, squares[1] * n * (n + 1.0) * ((2.0 * n) + 1), 1e-13);

        Squared3j.Fill(n, 1, squares);
        double upper = n * (n + 2.0) / ((n + 1.0) * ((2.0 * n) + 1) * ((2.0 * n) + 3));
        Assert.Equal(1, squares[1] / upper, 1e-13);
    }
}
