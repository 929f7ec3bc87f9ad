using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Tests.Materials;

public class SaundersonTests
{
    [Fact]
    public void A_coat_of_0_88_in_air_is_0_94_under_index_1_5() =>
        Assert.Equal(0.94, Saunderson.UnderMedium(0.88, 1.5), tolerance: 0.005);

    [Theory]
    [InlineData(0.15)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(1)]
    public void The_way_there_and_back_changes_nothing(double inAir) =>
        Assert.Equal(inAir, Saunderson.InAir(Saunderson.UnderMedium(inAir, 1.53), 1.53), tolerance: 1e-12);

    [Fact]
    public void A_lossless_coat_is_lossless_either_way()
    {
        Assert.Equal(1, Saunderson.UnderMedium(1, 1.5), tolerance: 1e-12);
        Assert.Equal(1, Saunderson.InAir(1, 1.5), tolerance: 1e-12);
    }

    [Fact]
    public void What_the_surface_alone_sends_back_is_black_under_resin() =>
        Assert.Equal(0, Saunderson.UnderMedium(0.05, 1.5));

    [Fact]
    public void A_board_read_in_air_is_converted_and_one_under_resin_is_not()
    {
        var shelf = new Shelf(
            new InMemoryMaterials(
                (
                    "materials/boards/own.yaml",
                    InMemoryMaterials
                        .Shipped("data/boards/bare-metal.yaml")
                        .Replace("taken: under resin", "taken: in air", StringComparison.Ordinal)
                )
            )
        );
        var index = Spectrum.Constant(1.5);
        var own = shelf.Board("own").Material!;
        var shipped = shelf.Board("bare-metal").Material!;
        Assert.Equal(shipped.Reflectance.Value[20], shipped.ReflectanceIn(index)[20]);
        Assert.Equal(
            Saunderson.UnderMedium(own.Reflectance.Value[20], 1.5),
            own.ReflectanceIn(index)[20],
            tolerance: 1e-15
        );
    }
}
