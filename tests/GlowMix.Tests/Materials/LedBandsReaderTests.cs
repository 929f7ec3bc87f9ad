using System.Globalization;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Tests.Materials;

/// <summary>An LED's file may tell its white by a label or a reading; the bands are then those of an LED told so by a recipe.</summary>
public class LedBandsReaderTests
{
    private const string Rest = """
        flux_lm:
          value: 20
          source: label
        at_ma:
          value: 60
          source: label
        max_ma:
          value: 150
          source: label
        window_radius_mm:
          value: 1.1
          source: assumed
        package_height_mm:
          value: 0.7
          source: assumed
        package_length_mm:
          value: 3.5
          source: assumed
        package_width_mm:
          value: 2.8
          source: assumed
        filling_index:
          value: 1.5
          source: assumed
        return_matrix:
          from_die:
            into_die: 0.25
            into_green: 0.2
            into_red: 0.1
          from_green:
            into_green: 0.6
            into_red: 0.2
          from_red:
            into_red: 0.9
          source: assumed

        """;

    private static readonly PackageRatings Ratings = new() { FluxLm = 20, AtMa = 60 };

    [Fact]
    public void A_label_gives_the_bands_of_a_recipes_label()
    {
        var led = Read("white:\n  cct_k: 3500\n  ra: 90\n  source: label\n").Material!;
        var told = LedFromLabel.Of(3500, 90, Ratings, new Shelf().ShippedLeds(), "mine").Led!;
        Assert.Equal(told.BareShapePerNm.Samples.ToArray(), led.BareShapePerNm.Samples.ToArray());
        Assert.Equal(told.StandInNote, led.StandInNote);
        Assert.Equal(20, led.FluxLm.Value);
    }

    [Fact]
    public void A_spectrum_adds_up_to_itself()
    {
        var bare = new Shelf().Led("warm-white-3000").Material!.BareShapePerNm;
        var rows = Enumerable
            .Range(0, WavelengthGrid.Count)
            .Select(i =>
                string.Create(CultureInfo.InvariantCulture, $"    {WavelengthGrid.NmAt(i)}: {bare[i]:R}\n")
            );
        var led = Read($"spectrum:\n  at_nm:\n{string.Concat(rows)}  source: own reading\n").Material!;
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            Assert.Equal(bare[i], led.BareShapePerNm[i], 1e-12);
        }
    }

    [Theory]
    [InlineData("white:\n  cct_k: 3500\n", "white has no source")]
    [InlineData("white:\n  cct_k: 35\n  source: label\n", "1800 to 12000")]
    [InlineData("white:\n  ra: 80\n  source: label\n", "'cct_k' is missing")]
    [InlineData("spectrum:\n  at_nm:\n    400: 1\n    500: 2\n  source: own reading\n", "too few points")]
    public void A_wrong_white_is_told(string white, string says) =>
        Assert.Contains(Read(white).Problems, p => p.Text.Contains(says, StringComparison.Ordinal));

    [Fact]
    public void White_and_spectrum_exclude_each_other() =>
        Assert.Contains(
            Read("white:\n  cct_k: 3500\n  source: label\nspectrum:\n  source: own reading\n").Problems,
            p => p.Text.Contains("exclude each other", StringComparison.Ordinal)
        );

    private static Loaded<Led> Read(string white) =>
        new Shelf(new OneFile($"material_format: 1\nkind: led\ntitle: Mine\n{white}{Rest}")).Led("mine.yaml");

    private sealed class OneFile(string text) : IMaterialSource
    {
        public FileText? Find(MaterialKind kind, string name) => null;

        public FileText Open(string path) => new(path, text, null);

        public IEnumerable<string> Names(MaterialKind kind) => [];
    }
}
