using System.Numerics;
using System.Text.RegularExpressions;
using GlowMix.Choosing;
using GlowMix.Colour;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Optics.Slab;
using GlowMix.Predictions;
using GlowMix.Readings.Decay;
using GlowMix.Readings.Files;
using GlowMix.Readings.Spectral;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Console.Tests.Papers;

/// <summary>
/// The library as somebody outside uses it: what DEVELOPERS.md shows of it is what stands here, line for line. This assembly sees no
/// more of the model than any other.
/// </summary>
public partial class LibraryUseTests
{
    private readonly string recipes = Path.Combine(TopFolder.Path, "recipes");

    [Fact]
    public void A_grain()
    {
        // 40 µm of index 1.65 + 0.0001 i in a resin of 1.53, at 450 nm.
        double sizeParameter = Math.PI * 40 * 1.53 / 0.450;
        LorenzMie sphere = LorenzMie.SeriesOf(sizeParameter, new Complex(1.65, 1e-4) / 1.53);
        SphereScattering scattering = sphere.Efficiencies();
        double[] moments = sphere.Moments(32);

        // A log-normal of such grains, per volume of grain, at every wavelength of the model.
        GrainTable grains = GrainTable.Of(
            pigmentIndex: Spectrum.Constant(1.65),
            pigmentAbsorptionPerMm: Spectrum.FromNm(nm => nm < 450 ? 6 : 1),
            resinIndex: Spectrum.Constant(1.53),
            GrainSizes.ByMass(medianUm: 40, geometricStandardDeviation: 1.5)
        );

        Assert.Equal(2, scattering.ExtinctionEfficiency, 0.1);
        Assert.Equal(scattering.Asymmetry, moments[1], 1e-9);
        Assert.Equal(33, grains.Moments(22).Length);
    }

    /// <summary>Figures of two codes independent of this one, within 2e-5.</summary>
    [Fact]
    public void A_slab()
    {
        double depth = 4;
        double albedo = 0.99;
        var medium = Medium.HenyeyGreenstein(depth * (1 - albedo), depth * albedo, asymmetry: 0.9);
        var stack = new LayerStack(1.5, new Layer(medium, DepthMm: 1)); // more layers from the floor upwards
        SlabSolution slab = SlabSolution.Of(stack, floorReflectance: 0.85);
        double back = slab.FromSky.Escaped; // of Lambertian light from the air
        double inLayer = slab.FromSky.AbsorbedInLayers[0];
        double inFloor = slab.FromSky.AbsorbedByFloor;
        double fromFloor = slab.FromFloor.Escaped; // of Lambertian light from the board
        double fluence = slab.FromSky.Fluence(layer: 0, heightMm: 0.5);
        double fromGlow = slab.EscapeShare(layer: 0, heightMm: 0.5); // of light sent out evenly there
        double ofBeam = slab.OfBeam(cosine: 1).Light.Escaped;

        Assert.Equal(0.57295, back, 2e-5);
        Assert.Equal(0.20946, inLayer, 2e-5);
        Assert.Equal(0.21759, inFloor, 2e-5);
        Assert.Equal(0.64471, fromFloor, 2e-5);
        Assert.Equal(0.58253, fromGlow, 2e-5);
        Assert.Equal(fromGlow * 4 * 1.5 * 1.5, fluence, 1e-12);
        Assert.InRange(ofBeam, 0.04, 1);
    }

    /// <summary>CIE 015:2018 prints 4103 K and x 0.3756 for it.</summary>
    [Fact]
    public void A_spectrum()
    {
        TabulatedSpectrum lamp = StandardIlluminants.Named("LED-B3"); // or TabulatedSpectrum.From(nm, wattsPerNm)
        ColourFigures colour = ColourFigures.Of(lamp);
        double? cctK = colour.CctK; // null where a light has none
        double? ra = colour.Ra;
        double? r12 = colour.Rendering?.R(12);

        Assert.Equal(4103, cctK!.Value, tolerance: 1);
        Assert.Equal(84.8, ra!.Value, 0.06);
        Assert.InRange(r12!.Value, 0, 100);
        Assert.Equal(0.3756, colour.ChromaticityX!.Value, 5.1e-5);
    }

    [Fact]
    public void A_recipe()
    {
        string text = File.ReadAllText(Path.Combine(recipes, "shortest.yaml"));
        var forecaster = new Forecaster(new Predictor(new Shelf())); // keep it: it remembers what it worked out
        PredictionOutcome outcome = forecaster.Bounded(RecipeDocument.Read(text, "shortest.yaml")); // or Drawn
        double? litK = outcome.Prediction?.Figures["lit.cct_k"]; // null with errors in outcome.Problems
        double? after1H = outcome.Prediction?.Figures["afterglow.luminance_mcd_m2", 60];

        Assert.Empty(outcome.Problems);
        Assert.InRange(litK!.Value, 3000, 4500);
        Assert.True(after1H > 0);
    }

    [Fact]
    public void Readings()
    {
        ReadingOutcome spectrum = ReadingFile.Read(Path.Combine(recipes, "readings", "stair-edge.bare.txt"));
        ReadingFigures? figures = spectrum.Spectrum is { } reading ? ReadingFigures.Of(reading) : null;
        ReadingOutcome decay = ReadingFile.Read(Path.Combine(recipes, "readings", "stair-edge.decay.txt"));
        DecayFigures? ofDecay = decay.Decay is { } told ? DecayFigures.Of(told) : null;
        double? toLimitMin = ofDecay?.MinutesToLimit; // what could not be read is in Problems, what to know in Warnings

        Assert.Empty(spectrum.Problems);
        Assert.Equal(3000, figures!.Colour.CctK!.Value, tolerance: 300);
        Assert.True(toLimitMin > 60);
    }

    [Fact]
    public void What_DEVELOPERS_shows_stands_here_line_for_line()
    {
        string paper = File.ReadAllText(Path.Combine(TopFolder.Path, "DEVELOPERS.md"));
        string own = Lines(
            File.ReadAllText(
                Path.Combine(
                    TopFolder.Path,
                    "tests",
                    "GlowMix.Console.Tests",
                    "Papers",
                    $"{nameof(LibraryUseTests)}.cs"
                )
            )
        );
        MatchCollection blocks = CSharpBlock().Matches(paper);
        Assert.Equal(5, blocks.Count);
        Assert.All(
            blocks,
            block => Assert.Contains(Lines(block.Groups[1].Value), own, StringComparison.Ordinal)
        );
    }

    private static string Lines(string text) =>
        string.Concat(text.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0).Select(l => l + "\n"));

    [GeneratedRegex("```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex CSharpBlock();
}
