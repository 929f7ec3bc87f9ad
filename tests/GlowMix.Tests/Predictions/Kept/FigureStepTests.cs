using System.Globalization;
using GlowMix.Predictions;
using GlowMix.Predictions.Kept;

namespace GlowMix.Tests.Predictions.Kept;

public class FigureStepTests
{
    [Theory]
    [InlineData("lit.cct_k", 3834.9, "3830")]
    [InlineData("lit.cct_k", 3835, "3840")]
    [InlineData("lit.shift_k", -3835, "-3840")]
    [InlineData("lit.shift_k", -4.9, "0")]
    [InlineData("lit.duv", 0.00025, "0.0005")]
    [InlineData("lit.duv", -0.000249, "0.0000")]
    [InlineData("lit.duv", 0.02, "0.0200")]
    [InlineData("lit.ra", 71.5, "72")]
    [InlineData("lit.flux_kept_percent", 106.74, "106.5")]
    [InlineData("lit.flux_lm", 0.04, "0.0")]
    [InlineData("lit.flux_lm", 1234.5, "1230")]
    [InlineData("afterglow.luminance_mcd_m2", 111.2, "111")]
    [InlineData("afterglow.luminance_mcd_m2", 24.55, "24.6")]
    [InlineData("afterglow.luminance_mcd_m2", 0.3049, "0.305")]
    [InlineData("afterglow.luminance_mcd_m2", 0.0304, "0.030")]
    [InlineData("afterglow.luminance_mcd_m2", 1e-40, "0.000")]
    [InlineData("afterglow.luminance_mcd_m2", 999.6, "1000")]
    [InlineData("afterglow.luminance_mcd_m2", 2855, "2860")]
    [InlineData("afterglow.minutes_to_limit", 1e12, "1000000000000")]
    [InlineData("afterglow.minutes_to_limit", 0, "0.0")]
    [InlineData("casting.part_a_g", 12.345, "12.3")]
    [InlineData("casting.settled_mm", 2.12, "2.10")]
    [InlineData("along.deep.depth_mm", 3.2, "3.20")]
    [InlineData("lit.shift_by_cause_k.index_matching", 914, "910")]
    [InlineData("lit.shift_by_cause_u_prime.index_matching", 0.0123, "0.0125")]
    public void A_figure_is_kept_in_its_own_steps(string family, double value, string written) =>
        Assert.Equal(written, Written(FigureSteps.Of(family), value));

    [Fact]
    public void Every_figure_has_a_step_and_is_never_further_off_than_half_of_it()
    {
        foreach (var figure in FigureCatalogue.All)
        {
            var step = FigureSteps.Of(figure.Family);
            for (double value = 0.0123; value < 1e6; value *= 1.37)
            {
                decimal kept = step.Round(value);
                double half = (double)step.At((decimal)value) / 2;
                Assert.InRange((double)kept, value - half - (5e-7 * value), value + half + (5e-7 * value));
                Assert.Equal(-kept, step.Round(-value));
            }
        }
    }

    [Fact]
    public void Relative_differences_of_1e_minus_9_change_no_digit_of_ten_thousand_figures()
    {
        var chance = new Random(20261125);
        int count = 0;
        foreach (var figure in FigureCatalogue.All)
        {
            var step = FigureSteps.Of(figure.Family);
            double size = (double)step.At(0);
            for (int i = 0; i < 110; i++)
            {
                // Half of them right on the edge between two steps, where numbers worked out from a round recipe like to be.
                double value =
                    i % 2 == 0
                        ? size * (i + 0.5) * (i % 4 == 0 ? 1 : 10)
                        : size * Math.Pow(10, 4 * chance.NextDouble());
                string written = Written(step, value);
                foreach (double part in (ReadOnlySpan<double>)[1e-9, 1e-12, 2.3e-16])
                {
                    Assert.Equal(written, Written(step, value * (1 + part)));
                    Assert.Equal(written, Written(step, value * (1 - part)));
                }
                count++;
            }
        }
        Assert.InRange(count, 10_000, 20_000);
    }

    private static string Written(FigureStep step, double value) =>
        step.Round(value).ToString(CultureInfo.InvariantCulture);
}
