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
        Assert.Equal(["", "ooooo", ""], Enumerable.Range(0, 3).Select(i => canvas.Row(i).Trim()));
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
    public void A_roomy_logarithmic_axis_is_marked_at_2_and_5_too() =>
        Assert.Equal(
            [0.5, 1, 2, 5, 10, 20],
            Axis.Logarithmic("min", 0.5, 20).Ticks(6),
            (a, b) => Math.Abs(a - b) < 1e-9
        );

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_value_stands_in_the_row_of_its_curve(bool ascii)
    {
        var plot = new Plot(
            "",
            Axis.Linear("s", 0, 1),
            Axis.Logarithmic("mm", 0.1, 1000),
            [new("", [0, 1], [100, 100], LineMark.Solid)]
        );
        foreach (int rows in Enumerable.Range(10, 14))
        {
            Assert.Contains(
                plot.Draw(60, rows, ascii),
                line => line[..Math.Min(8, line.Length)].Trim() == "100" && IsDrawn(line[^1])
            );
        }

        static bool IsDrawn(char letter) => letter is 'o' or (>= '\u2801' and <= '\u28ff');
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
                "       5|                ooooo",
                "        |      oooooooooo",
                "       0|oooooo",
                "         '0        '5      10'",
                "                             s",
                "  ooooo up",
            ],
            plot.Draw(30, 3, ascii: true)
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
