using GlowMix.Colour;
using GlowMix.LitState;
using GlowMix.Optics.Pour;
using GlowMix.Spectra;

namespace GlowMix.Tests.LitState;

public class LedUnderResinTests
{
    private static readonly Spectrum White = Spectrum.Constant(0.88);

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-5)]
    public void Under_ever_thinner_resin_the_light_tends_to_the_bare_board(double depthMm)
    {
        var led = TestLed.At(3000);
        var lit = Under(led, depthMm, areaShare: 0.05, White);
        // In proportion to depth: what misses the window is 2.5 to 3 depths over radii.
        double step = 5 * depthMm / TestLed.WindowRadiusMm;
        AssertSpectra(led.BareWPerNm, lit.EscapedWPerNm, step);
    }

    [Fact]
    public void So_it_does_in_a_resin_whose_index_changes_with_wavelength()
    {
        var led = TestLed.At(3000);
        var index = Spectrum.FromNm(nm => 1.53 + (0.0069 * ((1e6 / (nm * nm)) - 2.896)));
        var lit = Under(led, 1e-7, areaShare: 0.05, White, new ResinOptics(index, Spectrum.Zero));
        AssertSpectra(led.BareWPerNm, lit.EscapedWPerNm, 1e-6);
    }

    [Theory]
    [InlineData(0, 0.88)]
    [InlineData(0.05, 0.88)]
    [InlineData(0.05, 0.05)]
    [InlineData(0.15, 0.88)]
    public void In_lossless_resin_the_shift_rises_with_depth_and_ends_at_one_diameter(
        double areaShare,
        double reflectance
    )
    {
        double Shift(double depthMm) =>
            ShiftK(TestLed.At(3000), depthMm, areaShare, Spectrum.Constant(reflectance));
        double before = 0;
        foreach (double depthMm in (double[])[0.01, 0.05, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2.3, 5, 50])
        {
            double shift = Shift(depthMm);
            Assert.True(shift > before || (depthMm > 0.8 && shift > before - 1e-6), $"at {depthMm} mm");
            before = shift;
        }
        double end = Shift(1e4);
        Assert.InRange(Shift(2 * TestLed.WindowRadiusMm), 0.97 * end, end + 1e-6);
    }

    [Fact]
    public void In_absorbing_resin_it_falls_again_in_deep_pours()
    {
        var resin = Resin(1.52, perMmAt450: 0.004);
        double[] shifts =
        [
            .. ((double[])[0.1, 0.3, 1, 5, 20, 100]).Select(mm =>
                ShiftK(TestLed.At(3000), mm, 0.15, White, resin)
            ),
        ];
        Assert.Equal(2, Array.IndexOf(shifts, shifts.Max()));
        Assert.Equal(shifts[..3].Order(), shifts[..3]);
        Assert.Equal(shifts[2..].OrderDescending(), shifts[2..]);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.1)]
    [InlineData(0.2)]
    public void A_thin_coat_has_a_smaller_answer_of_its_own(double depthMm)
    {
        double thin = ShiftK(TestLed.At(3000), depthMm, 0.05, White);
        double deep = ShiftK(TestLed.At(3000), 3, 0.05, White);
        Assert.InRange(thin, 0.05 * deep, 0.5 * deep);
    }

    // From an independent sketch: 3930 K, Duv +0.004 and bands × 1.6, 1.24, 0.71 at an area share of 0.15; 4110 K at 0.05.
    // The factors are of whole bands (out of the piece over out of the bare package), not of windows in the spectrum, where
    // the green band's long side fills up what red loses. The same formulas in another language give 3920 and 4098 K and
    // 1.601, 1.239, 0.718 (1.722, 1.272, 0.675), so the sketch's bare white is off the locus or its shapes are by some kelvin.
    [Theory]
    [InlineData(0.15, 3930, 3919.9, 0.00376, 1.6008, 1.2387, 0.7178)]
    [InlineData(0.05, 4110, 4097.9, 0.00430, 1.7225, 1.2720, 0.6755)]
    public void A_warm_white_over_a_white_board_turns_as_worked_out_elsewhere(
        double areaShare,
        double sketchK,
        double cctK,
        double duv,
        double blue,
        double green,
        double red
    )
    {
        var led = TestLed.At(3000);
        var lit = Under(led, 1000, areaShare, White).EscapedWPerNm;
        var point = ColourPoint.Of(lit);
        Assert.Equal(cctK, point.CctK!.Value, tolerance: 1);
        Assert.Equal(sketchK, point.CctK!.Value, tolerance: 15);
        Assert.Equal(duv, point.Duv!.Value, tolerance: 5e-5);
        double[] ratios = [.. BandsOf(lit, led).Zip(led.BareW, (after, before) => after / before)];
        Assert.Equal(blue, ratios[0], tolerance: 1e-3);
        Assert.Equal(green, ratios[1], tolerance: 1e-3);
        Assert.Equal(red, ratios[2], tolerance: 1e-3);
    }

    [Fact]
    public void Where_nothing_is_lost_all_of_the_first_pass_comes_out()
    {
        var shares = TestLed.At(3000);
        var led = shares with
        {
            Returned = new double[,]
            {
                { 0.5, 0, 0 },
                { 0.3, 0.7, 0 },
                { 0.2, 0.3, 1 },
            },
        };
        double first = FirstPass.Of(led, Spectrum.Constant(1.5)).Sum(s => s.IntegralOverNm());
        foreach (double depthMm in (double[])[0.1, 1, 10])
        {
            var lit = Under(led, depthMm, 0.1, Spectrum.Constant(1));
            Assert.Equal(first, lit.EscapedWPerNm.IntegralOverNm(), tolerance: 1e-9);
        }
        // A face in air loses nothing either.
        Assert.Equal(led.BareW.Sum(), first, tolerance: 1e-12);
    }

    [Theory]
    [InlineData(0.05, 0.88, 0.004)]
    [InlineData(1, 0.05, 0.004)]
    [InlineData(30, 0.88, 0.1)]
    [InlineData(2, 1, 0)]
    [InlineData(1e-6, 0.88, 0.004)]
    public void The_budget_of_the_blue_closes(double depthMm, double reflectance, double perMm)
    {
        var budget = Under(
            TestLed.At(3000),
            depthMm,
            0.15,
            Spectrum.Constant(reflectance),
            Resin(1.52, perMm)
        ).Budget!.Value;
        Assert.Equal(
            1,
            budget.Escaped + budget.Pigment + budget.Resin + budget.Board + budget.Package,
            tolerance: 1e-9
        );
        Assert.Equal(0, budget.Pigment);
        Assert.All(
            (double[])[budget.Escaped, budget.Resin, budget.Board, budget.Package],
            share => Assert.InRange(share, 0, 1)
        );
    }

    [Fact]
    public void A_package_without_blue_has_no_budget_of_it()
    {
        var white = TestLed.At(3000);
        var amber = white with { BareW = [0, white.BareW[1], white.BareW[2]] };
        var lit = Under(amber, 2, 0.1, White);
        Assert.Null(lit.Budget);
        Assert.True(lit.EscapedWPerNm.IntegralOverNm() > 0);
    }

    // From an independent sketch, ± 30 % of each shift: n 1.52, board 0.87, area share 0.15.
    [Theory]
    [InlineData(0.3, 0.15, 0.87, 3520, null)]
    [InlineData(1, 0.15, 0.87, 3930, null)]
    [InlineData(5, 0.15, 0.87, 3870, 0.97)]
    [InlineData(3, 0.15, 0.05, 4080, 0.53)]
    [InlineData(3, 0.05, 0.05, 4190, null)]
    public void Clear_pours_have_the_expected_size(
        double depthMm,
        double areaShare,
        double reflectance,
        double cctK,
        double? fluxKept
    )
    {
        var led = TestLed.At(3000);
        var lit = Under(led, depthMm, areaShare, Spectrum.Constant(reflectance), Resin(1.52, 0.004));
        double shift = ColourPoint.Of(lit.EscapedWPerNm).CctK!.Value - 3000;
        Assert.InRange(shift / (cctK - 3000), 0.7, 1.3);
        if (fluxKept is double kept)
        {
            double ratio = Photometry.PhotopicLm(lit.EscapedWPerNm) / Photometry.PhotopicLm(led.BareWPerNm);
            Assert.InRange((1 - ratio) / (1 - kept), 0.7, 1.3);
        }
    }

    [Fact]
    public void Packages_that_stay_in_air_have_no_light_under_resin()
    {
        var stack = new PourStack(Resin(1.5, 0), [PourLayer.Clear(0.5)], PackageHeightMm: 0.5);
        Assert.Throws<ArgumentException>(() =>
            LedUnderResin.Of(TestLed.At(3000), PourOptics.Of(stack), White, 1)
        );
    }

    private static LedUnderResin Under(
        LedBands led,
        double depthMm,
        double areaShare,
        Spectrum board,
        ResinOptics? resin = null
    )
    {
        resin ??= Resin(1.5, 0);
        var pour = PourOptics.Of(new PourStack(resin, [PourLayer.Clear(depthMm)], PackageHeightMm: 0));
        double near = PackageReturn.Share(depthMm, TestLed.WindowRadiusMm, resin.Index[42]);
        return LedUnderResin.Of(led, pour, board, Math.Max(areaShare, near));
    }

    private static double ShiftK(
        LedBands led,
        double depthMm,
        double areaShare,
        Spectrum board,
        ResinOptics? resin = null
    ) =>
        ColourPoint.Of(Under(led, depthMm, areaShare, board, resin).EscapedWPerNm).CctK!.Value
        - ColourPoint.Of(led.BareWPerNm).CctK!.Value;

    private static ResinOptics Resin(double index, double perMmAt450) =>
        new(
            Spectrum.Constant(index),
            Spectrum.FromNm(nm => perMmAt450 * Math.Exp(-(Math.Min(nm, 600) - 450) / 100))
        );

    /// <summary>Powers of the three bands in a spectrum that is made of nothing else.</summary>
    private static double[] BandsOf(Spectrum light, LedBands led)
    {
        var shapes = MathNet.Numerics.LinearAlgebra.Double.DenseMatrix.OfColumnArrays(
            led.Shapes.Select(s => s.Samples.ToArray())
        );
        var samples = MathNet.Numerics.LinearAlgebra.Double.DenseVector.OfArray(light.Samples.ToArray());
        var powers = shapes.QR().Solve(samples);
        Assert.True((shapes * powers - samples).L2Norm() < 1e-9 * samples.L2Norm());
        return powers.ToArray();
    }

    private static void AssertSpectra(Spectrum expected, Spectrum actual, double relative)
    {
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(expected[i], actual[i], tolerance: relative * expected[i]);
        }
    }
}
