using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Tests.Colour;

/// <summary>
/// The CIE's illuminants against the figures that CIE 015:2018 prints for them (x, y), and against figures computed
/// independently of this code: on the table's own step, 380 to 780 nm, and, for the CCT, on linear interpolation to 1 nm
/// over all the table has from 360 nm on.
/// </summary>
public class StandardIlluminantsTests
{
    [Theory]
    // name, x, y (print), CCT (print, from memory), CCT at 5 nm, CCT at 1 nm, Duv, Ra (print, from memory), Ra, R9, S/P, lm/W
    [InlineData("a", 0.4476, 0.4074, 2856, 2855.5, 2855.7, 0.0000, 100, 100.0, 100, 1.412, 154.1)]
    [InlineData("d50", 0.3457, 0.3585, 5003, 5001.6, 5001.3, 0.0032, 100, 100.0, 100, 2.160, 206.2)]
    [InlineData("d55", 0.3324, 0.3474, 5503, 5502.2, 5501.9, 0.0033, 100, 100.0, 100, 2.275, 206.3)]
    [InlineData("d65", 0.3127, 0.3290, 6504, 6502.9, 6502.6, 0.0032, 100, 100.0, 100, 2.465, 203.5)]
    [InlineData("d75", 0.2990, 0.3149, 7504, 7504.7, 7504.6, 0.0031, 100, 100.0, 100, 2.615, 199.3)]
    [InlineData("fl1", 0.3131, 0.3371, 6430, 6428.1, 6425.3, 0.0071, 76, 75.8, -47, 2.203, 292.3)]
    [InlineData("fl2", 0.3721, 0.3751, 4230, 4224.4, 4225.1, 0.0018, 64, 64.2, -84, 1.571, 336.4)]
    [InlineData("fl3", 0.4091, 0.3941, 3450, 3446.0, 3447.3, 0.0007, 57, 56.7, -102, 1.246, 359.6)]
    [InlineData("fl4", 0.4402, 0.4031, 2940, 2937.9, 2939.5, -0.0008, 51, 51.4, -111, 1.015, 370.3)]
    [InlineData("fl5", 0.3138, 0.3452, 6350, 6345.2, 6342.6, 0.0107, 72, 71.7, -68, 2.152, 301.1)]
    [InlineData("fl6", 0.3779, 0.3882, 4150, 4148.4, 4148.9, 0.0060, 59, 59.0, -105, 1.479, 353.5)]
    [InlineData("fl7", 0.3129, 0.3292, 6500, 6494.7, 6489.9, 0.0032, 90, 90.2, 61, 2.318, 253.5)]
    [InlineData("fl8", 0.3458, 0.3586, 5000, 4997.2, 4994.7, 0.0032, 95, 95.5, 98, 2.086, 253.3)]
    [InlineData("fl9", 0.3741, 0.3727, 4150, 4148.9, 4147.9, -0.0000, 90, 90.3, 70, 1.781, 269.0)]
    [InlineData("fl10", 0.3458, 0.3588, 5000, 4998.3, 4998.7, 0.0033, 81, 81.0, 27, 1.847, 324.9)]
    [InlineData("fl11", 0.3805, 0.3769, 4000, 3998.6, 4000.7, 0.0001, 83, 82.8, 25, 1.596, 336.7)]
    [InlineData("fl12", 0.4370, 0.4042, 3000, 2999.6, 3002.5, 0.0000, 83, 83.1, 1, 1.252, 352.9)]
    [InlineData("led_b1", 0.4560, 0.4078, 2733, 2733.4, 2734.7, -0.0007, double.NaN, 81.8, 13, 1.213, 311.7)]
    [InlineData("led_b2", 0.4357, 0.4012, 2998, 2997.7, 2998.8, -0.0010, double.NaN, 82.8, 18, 1.330, 313.8)]
    [InlineData("led_b3", 0.3756, 0.3723, 4103, 4102.5, 4102.4, -0.0007, double.NaN, 84.8, 24, 1.721, 316.9)]
    [InlineData("led_b4", 0.3422, 0.3502, 5109, 5108.8, 5105.8, 0.0005, double.NaN, 76.8, -2, 1.847, 319.2)]
    [InlineData("led_b5", 0.3118, 0.3236, 6598, 6597.4, 6590.6, 0.0009, double.NaN, 80.2, 7, 2.176, 305.2)]
    [InlineData("led_bh1", 0.4474, 0.4066, 2851, 2851.3, 2852.3, -0.0003, double.NaN, 91.8, 73, 1.269, 345.2)]
    [InlineData(
        "led_rgb1",
        0.4557,
        0.4211,
        2840,
        2839.8,
        2839.5,
        0.0043,
        double.NaN,
        57.1,
        -34,
        1.660,
        291.4
    )]
    [InlineData("led_v1", 0.4548, 0.4044, 2724, 2723.7, 2725.1, -0.0019, double.NaN, 95.3, 98, 1.407, 235.4)]
    [InlineData("led_v2", 0.3781, 0.3775, 4070, 4069.5, 4072.0, 0.0010, double.NaN, 95.7, 95, 1.959, 246.3)]
    public void An_illuminant_has_the_figures_of_CIE_015_2018_on_its_own_step(
        string name,
        double x,
        double y,
        double printedCctK,
        double cctK,
        double cctAt1NmK,
        double duv,
        double printedRa,
        double ra,
        double r9,
        double scotopicPhotopicRatio,
        double efficacyLmPerW
    )
    {
        TabulatedSpectrum table = StandardIlluminants.Named(name).Between(380, 780);
        ColourFigures figures = ColourFigures.Of(table);

        Assert.Equal(x, figures.ChromaticityX!.Value, 0.00005 + 1e-9);
        Assert.Equal(y, figures.ChromaticityY!.Value, 0.00005 + 1e-9);
        Assert.Equal(cctK, figures.CctK!.Value, 0.051);
        Assert.Equal(duv, figures.Duv!.Value, 0.000051);
        Assert.Equal(ra, figures.Ra!.Value, 0.051);
        Assert.Equal(r9, figures.R9!.Value, 0.51);
        Assert.Equal(scotopicPhotopicRatio, figures.ScotopicPhotopicRatio!.Value, 0.00051);
        Assert.Equal(efficacyLmPerW, figures.LuminousEfficacyLmPerW!.Value, 0.051);

        // FL prints are rounded to 10 K, and FL2 and FL7 are 5 to 6 K off by their own x, y.
        Assert.Equal(
            printedCctK,
            figures.CctK.Value,
            name.StartsWith("fl", StringComparison.Ordinal) ? 10 : 1.5
        );

        if (!double.IsNaN(printedRa)) // None is printed for the LEDs; that of FL8 is against daylight.
        {
            Assert.Equal(printedRa, figures.Ra.Value, 0.55);
        }

        Assert.Equal(cctAt1NmK, ColourFigures.Of(At1Nm(StandardIlluminants.Named(name))).CctK!.Value, 0.051);
    }

    private static TabulatedSpectrum At1Nm(TabulatedSpectrum table)
    {
        int first = Math.Max(360, (int)table.FirstNm);
        double[] nm = [.. Enumerable.Range(first, (int)table.LastNm - first + 1).Select(n => (double)n)];
        return TabulatedSpectrum.From(nm, [.. nm.Select(table.ValueAtNm)]);
    }

    [Theory]
    [InlineData("D65", "d65")]
    [InlineData("LED-B3", "led_b3")]
    [InlineData("FL11", "fl11")]
    public void A_name_may_be_written_as_the_CIE_writes_it(string written, string own) =>
        Assert.Equal(
            StandardIlluminants.Named(own).Values.ToArray(),
            StandardIlluminants.Named(written).Values.ToArray()
        );

    [Fact]
    public void An_unknown_name_is_refused_with_those_there_are() =>
        Assert.Contains(
            "led_b1",
            Assert.Throws<ArgumentException>(() => StandardIlluminants.Named("d60")).Message,
            StringComparison.Ordinal
        );
}
