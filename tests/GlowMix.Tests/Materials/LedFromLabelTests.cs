using GlowMix.Colour;
using GlowMix.Materials;

namespace GlowMix.Tests.Materials;

public class LedFromLabelTests
{
    private static readonly Shelf Shelf = new();
    private static readonly PackageRatings Ratings = new()
    {
        FluxLm = 24,
        AtMa = 65,
        MaxMa = 180,
        PackageHeightMm = 0.9,
    };

    [Theory]
    [InlineData(2200, 80.0)]
    [InlineData(2700, 80.0)]
    [InlineData(2700, 90.0)]
    [InlineData(3500, 80.0)]
    [InlineData(4000, 90.0)]
    [InlineData(5000, 80.0)]
    [InlineData(6500, 80.0)]
    [InlineData(6500, null)]
    public void The_bands_have_the_labels_white_and_rendering(double cctK, double? ra)
    {
        var led = Of(cctK, ra);
        var figures = ColourFigures.Of(led.BareShapePerNm);
        Assert.Equal(cctK, figures.CctK!.Value, tolerance: 1);
        Assert.Equal(0, figures.Duv!.Value, tolerance: 1e-4);
        if (ra is { } asked)
        {
            Assert.Equal(asked, figures.Ra!.Value, tolerance: 1);
        }
        Assert.Equal(24, led.WattsAtRated * figures.LuminousEfficacyLmPerW!.Value, tolerance: 1e-9);
        Assert.Contains("stand-in", led.StandInNote, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rendering_out_of_reach_is_neared_and_told()
    {
        var led = Of(6500, 99);
        double ra = ColourFigures.Of(led.BareShapePerNm).Ra!.Value;
        Assert.InRange(ra, 84, 98);
        Assert.Contains("the label's 99 is out of reach", led.StandInNote, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_label_tells_is_the_users_and_the_rest_is_assumed()
    {
        var led = Of(3000, 80);
        Assert.Equal((24, SourceMark.Users), (led.FluxLm.Value, led.FluxLm.Mark));
        Assert.Equal((180, SourceMark.Users), (led.MaxMa.Value, led.MaxMa.Mark));
        Assert.Equal((0.9, SourceMark.Users), (led.PackageHeightMm.Value, led.PackageHeightMm.Mark));
        Assert.Equal(SourceMark.Assumed, led.PackageLengthMm.Mark);
        Assert.Equal(SourceMark.Assumed, led.ReturnMatrix.Mark);
        Assert.Equal(SourceMark.Assumed, led.Green.Share.Mark);
        Assert.Contains("warm-white-3000", led.ReturnMatrix.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_white_that_no_such_LED_can_have_is_refused()
    {
        var worked = LedFromLabel.Of(700, 80, Ratings, Shelf.ShippedLeds(), "label");
        Assert.Null(worked.Led);
        Assert.Equal(MaterialProblemTexts.NoWhiteOfThatTemperature(700), worked.Problem);
    }

    [Fact]
    public void A_matrix_that_would_claim_more_than_a_band_holds_is_softened_and_loses_no_light()
    {
        var matrix = Shelf.Led("warm-white-3000").Material!.ReturnMatrix.Value;
        var softened = StandInLed.Fitting(matrix, [0.3, 0.65, 0.05]);
        Assert.True(softened[2, 0] < matrix[2, 0] && softened[2, 1] < matrix[2, 1]);
        for (int from = 0; from < 3; from++)
        {
            Assert.Equal(matrix.ColumnSum(from), softened.ColumnSum(from), tolerance: 1e-12);
        }
    }

    private static Led Of(double cctK, double? ra)
    {
        var worked = LedFromLabel.Of(cctK, ra, Ratings, Shelf.ShippedLeds(), "label");
        Assert.Null(worked.Problem);
        return worked.Led!;
    }
}
