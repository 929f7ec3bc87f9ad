using GlowMix.Console.Plots;

namespace GlowMix.Console.Tests.Plots;

public sealed class PlotTests
{
    [Fact]
    public void A_diagonal_in_braille()
    {
        var canvas = new BrailleCanvas(2, 1);
        canvas.Line((0, 3), (3, 0), LineMark.Solid);
        // Unicode chart U2800: dots 7 and 6 in the first letter, 2 and 4 in the second.
        Assert.Equal($"{(char)(0x2800 + 0x40 + 0x20)}{(char)(0x2800 + 0x02 + 0x08)}", canvas.Row(0));
    }

    [Fact]
    public void A_line_far_outside_is_cut_and_a_dot_outside_is_left_out()
    {
        var canvas = new AsciiCanvas(5, 3);
        canvas.Line((-1e9, 1), (1e9, 1), LineMark.Solid);
        canvas.Line((0, -1e9), (4, -1e9), LineMark.Solid);
        canvas.Set(-1, 0, LineMark.Solid);
        Assert.Equal(["", "*****", ""], Enumerable.Range(0, 3).Select(i => canvas.Row(i).Trim()));
    }

    [Fact]
    public void Ticks_of_a_linear_axis_are_round() =>
        Assert.Equal([400, 500, 600, 700], Axis.Linear("nm", 380, 780).Ticks(5));

    [Fact]
    public void Ticks_of_a_logarithmic_axis_are_decades()
    {
        var axis = Axis.Logarithmic("min", 0.5, 480);
        Assert.Equal([1.0, 10, 100], axis.Ticks(5));
        Assert.Equal(0.5, axis.Position(Math.Sqrt(0.5 * 480)), 12);
    }

    [Fact]
    public void A_plot_has_axes_with_units_and_a_legend()
    {
        var plot = new Plot(
            "Line",
            Axis.Linear("s", 0, 10),
            Axis.Linear("mm", 0, 5),
            [new("up", [0, 10], [0, 5], LineMark.Solid)]
        );
        Assert.Equal(
            [
                "Line",
                "mm",
                "       5+               *****",
                "        |     **********",
                "       0+*****",
                "        ++---------+--------+",
                "         0         5       10",
                "                            s",
                "  ***** up",
            ],
            plot.Draw(29, 3, ascii: true)
        );
    }

    [Theory]
    [InlineData(40, false)]
    public void The_plots_of_a_prediction_keep_to_their_width(int columns, bool ascii)
    {
        var prediction = SamplePredictions.StairEdge;
        Plot[] plots =
        [
            PredictionPlots.Spectrum(prediction.Spectra),
            PredictionPlots.Decay(prediction.Decay!, prediction.LimitMcdPerM2)!,
        ];
        foreach (var drawn in plots.Select(p => p.Draw(columns, 12, ascii)))
        {
            Assert.All(drawn, line => Assert.InRange(line.Length, 0, columns));
            Assert.Equal(ascii, drawn.SkipLast(1).Skip(2).All(line => line.All(char.IsAscii)));
        }
    }
}
