using GlowMix.Materials;
using GlowMix.Readings.Fit;
using GlowMix.Spectra;

namespace GlowMix.Tests.Readings.Fit;

public sealed class BareLedTests
{
    private static readonly Shelf Shelf = new();

    [Theory]
    [InlineData("warm-white-3000", "warm-white-3000", false)]
    [InlineData("warm-white-2700", "warm-white-3000", false)]
    [InlineData("neutral-white-4000", "warm-white-3000", true)]
    public void A_reading_whose_white_is_far_from_that_of_the_file_is_told(
        string read,
        string file,
        bool isOfAnother
    )
    {
        var (seen, led) = (Shelf.Led(read).Material!, Shelf.Led(file).Material!);
        var table = TabulatedSpectrum.From(
            [.. Enumerable.Range(0, WavelengthGrid.Count).Select(i => (double)WavelengthGrid.NmAt(i))],
            seen.BareShapePerNm.Samples
        );
        Assert.Equal(isOfAnother, BareLed.IsOfAnother(table, led));
    }

    [Fact]
    public void It_says_both_whites() =>
        Assert.Equal(
            "the bare board reads 4000 K, warm-white-3000 has 3000 K by its file: is it a reading of this LED?",
            FitTexts.AnotherLed(
                Shelf.Led("warm-white-3000").Material!,
                Shelf.Led("neutral-white-4000").Material!.BareShapePerNm
            )
        );
}
