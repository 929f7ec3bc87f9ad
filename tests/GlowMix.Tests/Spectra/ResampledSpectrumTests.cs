using GlowMix.Spectra;

namespace GlowMix.Tests.Spectra;

public class ResampledSpectrumTests
{
    [Fact]
    public void A_table_on_the_grid_in_steps_of_5_nm_is_taken_as_it_is()
    {
        double[] values = [.. Enumerable.Range(0, 107).Select(i => Math.Sin(i) + (i % 3))];
        ResampledSpectrum taken = ResampledSpectrum.From(Table(300, 5, values));

        Assert.Equal(values[8..97], taken.Spectrum.Samples.ToArray());
        Assert.False(taken.IsInterpolated);
        Assert.True(taken.CoversGrid);
    }

    [Fact]
    public void Steps_that_are_5_nm_but_for_the_last_bits_are_5_nm()
    {
        double[] nm = new double[89];
        double sum = 340;
        for (int i = 0; i < nm.Length; i++, sum += 50.0 / 10.000000000001)
        {
            nm[i] = sum;
        }
        double[] values = [.. nm.Select((_, i) => (double)(i % 2))];

        Assert.Equal(
            values,
            ResampledSpectrum.From(TabulatedSpectrum.From(nm, values)).Spectrum.Samples.ToArray()
        );
    }

    [Fact]
    public void Finer_data_are_averaged_over_the_band_and_keep_their_integral()
    {
        // A line 1 nm wide at half height, once in the middle of a band and once on the edge of two.
        TabulatedSpectrum middle = Table(
            300,
            1,
            [.. Enumerable.Range(0, 501).Select(i => i == 200 ? 1.0 : 0)]
        );
        Spectrum one = ResampledSpectrum.From(middle).Spectrum;
        Assert.Equal(0.2, one[32], 1e-12);
        Assert.Equal(1, one.IntegralOverNm(), 1e-12);

        TabulatedSpectrum edge = Table(
            300.5,
            1,
            [.. Enumerable.Range(0, 501).Select(i => i == 202 ? 1.0 : 0)]
        );
        Spectrum two = ResampledSpectrum.From(edge).Spectrum;
        Assert.Equal(0.1, two[32], 1e-12);
        Assert.Equal(0.1, two[33], 1e-12);
        Assert.Equal(1, two.IntegralOverNm(), 1e-12);
    }

    [Fact]
    public void A_straight_line_stays_itself_on_any_finer_grid_even_an_uneven_one()
    {
        double[] nm = [.. Enumerable.Range(0, 700).Select(i => 330 + (i * 0.7) + (0.2 * Math.Sin(i)))];
        ResampledSpectrum taken = ResampledSpectrum.From(
            TabulatedSpectrum.From(nm, [.. nm.Select(n => (0.01 * n) - 2)])
        );

        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal((0.01 * WavelengthGrid.NmAt(i)) - 2, taken.Spectrum[i], 1e-11);
        }
        Assert.False(taken.IsInterpolated);
    }

    [Fact]
    public void Steps_of_5_nm_beside_the_grid_are_averaged_without_a_warning()
    {
        double[] nm = [.. Enumerable.Range(0, 100).Select(i => 332.5 + (i * 5))];
        ResampledSpectrum taken = ResampledSpectrum.From(
            TabulatedSpectrum.From(nm, [.. nm.Select(n => n == 502.5 ? 1.0 : 0)])
        );

        Assert.Equal(0.5, taken.Spectrum[32], 1e-12);
        Assert.Equal(0.5, taken.Spectrum[33], 1e-12);
        Assert.False(taken.IsInterpolated);
    }

    [Fact]
    public void Coarser_data_are_interpolated_and_said_to_be()
    {
        ResampledSpectrum taken = ResampledSpectrum.From(
            Table(300, 10, [.. Enumerable.Range(0, 51).Select(i => (double)(i % 2))])
        );

        Assert.Equal([0, 0.5, 1, 0.5, 0], taken.Spectrum.Samples[..5].ToArray());
        Assert.True(taken.IsInterpolated);
        Assert.Equal(10, taken.WidestStepNm);
    }

    [Fact]
    public void A_table_coarse_in_one_place_only_is_interpolated_there_and_said_to_be()
    {
        double[] nm =
        [
            .. Enumerable.Range(340, 61).Select(n => (double)n),
            420,
            .. Enumerable.Range(421, 360).Select(n => (double)n),
        ];
        ResampledSpectrum taken = ResampledSpectrum.From(TabulatedSpectrum.From(nm, [.. nm.Select(n => n)]));

        Assert.True(taken.IsInterpolated);
        Assert.Equal(20, taken.WidestStepNm);
        Assert.Equal(410, taken.Spectrum[14], 1e-12);
        Assert.Equal(500, taken.Spectrum[32], 1e-12);
    }

    [Fact]
    public void Beyond_the_table_the_samples_are_zero_and_the_range_is_told()
    {
        ResampledSpectrum taken = ResampledSpectrum.From(Table(402, 1, [.. Enumerable.Repeat(0.9, 300)]));

        Assert.Equal(405, taken.FirstKnownNm);
        Assert.Equal(700, taken.LastKnownNm);
        Assert.False(taken.CoversGrid);
        Assert.Equal(0, taken.Spectrum[12]);
        Assert.Equal(0.9, taken.Spectrum[13], 1e-12);
        Assert.Equal(0.9, taken.Spectrum[72], 1e-12);
        Assert.Equal(0, taken.Spectrum[73]);
    }

    [Fact]
    public void At_its_end_a_table_is_averaged_over_what_it_covers_of_the_band() =>
        Assert.Equal(
            0.9,
            ResampledSpectrum.From(Table(400, 1, [.. Enumerable.Repeat(0.9, 301)])).Spectrum[12],
            1e-12
        );

    [Fact]
    public void A_table_outside_the_grid_gives_nothing_and_says_so()
    {
        ResampledSpectrum taken = ResampledSpectrum.From(Table(800, 1, [1, 1, 1]));

        Assert.Equal(0, taken.Spectrum.IntegralOverNm());
        Assert.Null(taken.FirstKnownNm);
        Assert.Null(taken.LastKnownNm);
        Assert.False(taken.IsInterpolated);
    }

    private static TabulatedSpectrum Table(double firstNm, double stepNm, double[] values) =>
        TabulatedSpectrum.From([.. values.Select((_, i) => firstNm + (i * stepNm))], values);
}
