using GlowMix.Spectra;

namespace GlowMix.Tests.Spectra;

public class TabulatedSpectrumTests
{
    private static readonly TabulatedSpectrum Uneven = TabulatedSpectrum.From([400, 410, 425], [1, 3, 0]);

    [Theory]
    [InlineData(399.999, 0)]
    [InlineData(400, 1)]
    [InlineData(402.5, 1.5)]
    [InlineData(410, 3)]
    [InlineData(420, 1)]
    [InlineData(425, 0)]
    [InlineData(426, 0)]
    public void Between_samples_the_value_is_on_a_straight_line_and_beyond_them_zero(
        double nm,
        double value
    ) => Assert.Equal(value, Uneven.ValueAtNm(nm), 1e-12);

    [Fact]
    public void A_part_of_a_table_keeps_the_samples_at_both_its_ends()
    {
        TabulatedSpectrum part = Uneven.Between(400, 415);

        Assert.Equal([400, 410], part.WavelengthsNm.ToArray());
        Assert.Equal([1, 3], part.Values.ToArray());
        Assert.Throws<ArgumentException>(() => Uneven.Between(405, 415));
        Assert.Throws<ArgumentException>(() => Uneven.Between(430, 440));
    }

    [Fact]
    public void What_is_done_to_the_arrays_afterwards_does_not_reach_the_table()
    {
        double[] values = [1, 2];
        TabulatedSpectrum table = TabulatedSpectrum.From([400, 410], values);
        values[0] = 9;
        Assert.Equal(1, table.ValueAtNm(400));
    }

    [Theory]
    [InlineData(new double[] { 400 }, new double[] { 1 }, "at least two")]
    [InlineData(new double[] { 400, 410 }, new double[] { 1 }, "1 values for 2 wavelengths")]
    [InlineData(new double[] { 400, 400 }, new double[] { 1, 1 }, "number 2 is 400 after 400")]
    [InlineData(new double[] { 410, 400.5 }, new double[] { 1, 1 }, "number 2 is 400.5 after 410")]
    [InlineData(new double[] { -1, 400 }, new double[] { 1, 1 }, "number 1 is -1")]
    [InlineData(new double[] { 400, double.NaN }, new double[] { 1, 1 }, "number 2 is NaN")]
    [InlineData(new double[] { 400, 410.5 }, new double[] { 1, double.NaN }, "at 410.5 nm is not a finite")]
    public void A_table_that_is_none_is_refused_with_the_place(double[] nm, double[] values, string says) =>
        Assert.Contains(
            says,
            Assert.Throws<ArgumentException>(() => TabulatedSpectrum.From(nm, values)).Message,
            StringComparison.Ordinal
        );
}
