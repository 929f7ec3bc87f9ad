using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tests.Tune.Model;

public class KnobStepsTests
{
    [Theory]
    [InlineData("loading_percent", 20, 21, 19)]
    [InlineData("loading_percent", 20.4, 21, 20)]
    [InlineData("depth_mm", 2.5, 2.6, 2.4)]
    [InlineData("grain_median_um", 40, 45, 35)]
    [InlineData("depth_mm", 0.3, 0.4, 0.2)]
    public void A_turn_goes_to_the_next_multiple(string name, double from, double up, double down)
    {
        var steps = KnobSteps.For(name);
        Assert.Equal(up, steps.Next(from, StepSize.Usual, up: true));
        Assert.Equal(down, steps.Next(from, StepSize.Usual, up: false));
    }

    [Theory]
    [InlineData("Fine")]
    [InlineData("Usual")]
    [InlineData("Large")]
    public void A_hundred_turns_and_a_hundred_back_meet_exactly(string step)
    {
        var size = Enum.Parse<StepSize>(step);
        var steps = KnobSteps.For("depth_mm");
        double at = 2.5;
        for (int i = 0; i < 100; i++)
        {
            at = steps.Next(at, size, up: true);
        }
        for (int i = 0; i < 100; i++)
        {
            at = steps.Next(at, size, up: false);
        }
        Assert.Equal(2.5, at);
    }
}
