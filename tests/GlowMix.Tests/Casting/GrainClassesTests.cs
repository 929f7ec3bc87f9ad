using GlowMix.Casting;

namespace GlowMix.Tests.Casting;

public class GrainClassesTests
{
    [Theory]
    [InlineData(1.2)]
    [InlineData(1.5)]
    [InlineData(2.5)]
    public void The_mean_square_is_that_of_the_log_normal(double gsd)
    {
        var classes = new GrainClasses(40, gsd);
        double expected = 1600 * Math.Exp(2 * Math.Pow(Math.Log(gsd), 2));
        Assert.Equal(1, classes.DiametersUm.Average(d => d * d) / expected, tolerance: 1e-9);
    }

    [Fact]
    public void Each_class_lies_between_its_fifths()
    {
        var classes = new GrainClasses(40, 1.5);
        double[] fifths = [40 * Math.Pow(1.5, -0.841621), 40 * Math.Pow(1.5, -0.253347)]; // normal table
        Assert.InRange(classes.DiametersUm[0], 0, fifths[0]);
        Assert.InRange(classes.DiametersUm[1], fifths[0], fifths[1]);
        Assert.InRange(classes.DiametersUm[2], fifths[1], 1600 / fifths[1]);
        Assert.InRange(classes.DiametersUm[3], 1600 / fifths[1], 1600 / fifths[0]);
        Assert.True(classes.DiametersUm[4] > 1600 / fifths[0]);
    }

    [Theory]
    [InlineData(15)]
    [InlineData(40)]
    [InlineData(200)]
    public void Grains_all_alike_make_five_classes_all_alike(double medianUm) =>
        Assert.All(new GrainClasses(medianUm, 1).DiametersUm, d => Assert.Equal(medianUm, d));

    [Theory]
    [InlineData(1e-16)]
    [InlineData(1e-14)]
    [InlineData(1e-9)]
    [InlineData(1e-3)]
    public void A_coarser_class_is_never_the_finer_one_however_alike_the_grains(double spread)
    {
        var classes = new GrainClasses(37.3, 1 + spread);
        Assert.Equal(classes.DiametersUm.Order(), classes.DiametersUm);
    }

    [Fact]
    public void Sizes_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new GrainClasses(0, 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new GrainClasses(40, 0.9));
    }
}
