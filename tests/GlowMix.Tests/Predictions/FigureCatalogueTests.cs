using GlowMix.Predictions;

namespace GlowMix.Tests.Predictions;

public class FigureCatalogueTests
{
    [Fact]
    public void Names_are_unique_and_found_again()
    {
        Assert.Equal(FigureCatalogue.All.Count, FigureCatalogue.All.Select(f => f.Name).Distinct().Count());
        Assert.All(FigureCatalogue.All, f => Assert.Same(f, FigureCatalogue.Find(f.Name)));
    }

    [Fact]
    public void Minutes_are_written_as_keys_with_a_point() =>
        Assert.NotNull(FigureCatalogue.Find("afterglow.luminance_mcd_m2[0.5]"));

    [Fact]
    public void A_figure_that_is_no_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => new FigureValues.Builder().Set("lit.duv", double.NaN));
}
