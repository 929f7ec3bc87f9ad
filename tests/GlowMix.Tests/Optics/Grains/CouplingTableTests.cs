using GlowMix.Optics.Grains;

namespace GlowMix.Tests.Optics.Grains;

public class CouplingTableTests
{
    [Theory]
    [InlineData(40, 32)]
    [InlineData(21, 31)]
    [InlineData(300, 7)]
    [InlineData(9, 1)]
    [InlineData(30, 64)]
    public void Weights_are_the_squared_symbols_times_both_orders(int terms, int highest)
    {
        using var table = new CouplingTable(terms, highest);
        var squares = new double[highest + 1];
        var one = new double[highest + 1];
        for (int n = 1; n <= terms; n++)
        {
            for (int d = 0; d <= highest; d++)
            {
                Squared3j.Fill(n, d, squares);
                Array.Clear(one);
                one[d] = 1;
                double pair = (d == 0 ? 1 : 2) * ((2.0 * n) + 1) * ((2.0 * (n + d)) + 1);
                for (int l = d; l <= highest; l++)
                {
                    double expected = pair * squares[l];
                    Assert.Equal(expected, table.Coupled(n, l, one), 1e-10 * (1 + expected));
                }
            }
        }
    }
}
