using System.Globalization;
using System.Text;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;
using GlowMix.Spectra;
using GlowMix.Tests.Readings.Fit;
using GlowMix.Tests.Recipes;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Interpolation;

namespace GlowMix.Tests.Readings.Sets;

/// <summary>
/// The invented readings of recipes/readings: what the model makes of materials that differ from those of the shelf, with noise.
/// </summary>
internal static class DemoReadings
{
    private const double Noise = 0.01;
    private const double FloorShare = 3e-4;
    private const int Seed = 20_260_331;

    /// <summary>The hidden truth, as recipes/readings/README.md tells it.</summary>
    public static HiddenTruth Truth { get; } =
        new()
        {
            // The shelf's, with 1.2 times the conversion.
            ReturnEntries = [0.25, 1.2 * 0.25, 1.2 * 0.20, 0.60, 1.2 * 0.30, 0.90],
            Strength = 1.4,
            Yield = 0.70,
            TrapLevel = 1.3,
            MiddleMinutes = Math.Sqrt(240),
        };

    /// <summary>The repository's folder recipes/readings.</summary>
    public static string Folder { get; } = Path.Combine(Sample.Folder(), "readings");

    /// <summary>Names and texts of the files.</summary>
    public static IReadOnlyDictionary<string, string> Files { get; } = All();

    private static Dictionary<string, string> All()
    {
        var document = RecipeDocument.Read(
            DocumentFile.Read(Path.Combine(Sample.Folder(), "stair-edge.yaml"))
        );
        var predictor = new Predictor(new Shelf());
        var piece = predictor.Check(document).Piece!;
        var potted = predictor
            .CheckChanged(
                RecipeState
                    .Of(
                        document.Recipe!,
                        new("", ReadingState.Potted),
                        piece.Led.PackageHeightMm.Value,
                        piece.Led.Name
                    )
                    .Recipe!
            )
            .Piece!;
        var random = new Random(Seed);
        var glowing = Truth.RunOf(piece);
        var clear = Truth.RunOf(potted);
        return new()
        {
            ["stair-edge.bare.txt"] = SpectrumText("the bare board", glowing.Light.BareWPerNm, random),
            ["stair-edge.potted.txt"] = SpectrumText(
                "a strip potted in 3 mm of clear resin",
                clear.Light.LitWPerNm,
                random
            ),
            ["stair-edge.pigmented.txt"] = SpectrumText(
                "a strip poured as the recipe says",
                glowing.Light.LitWPerNm,
                random
            ),
            ["stair-edge.decay.txt"] = DecayText(glowing, random),
        };
    }

    private static string SpectrumText(string what, Spectrum wPerNm, Random random)
    {
        var curve = CubicSpline.InterpolateNaturalSorted(
            [.. Enumerable.Range(0, WavelengthGrid.Count).Select(i => (double)WavelengthGrid.NmAt(i))],
            wPerNm.Samples.ToArray()
        );
        double peak = wPerNm.Samples.ToArray().Max();
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"# Invented reading of {what}, lit: made by the model with 1 % noise, by no instrument\n"
        );
        text.Append("Wavelength (nm)\tIrradiance (uW/cm2/nm)\n");
        for (int nm = 380; nm <= 780; nm++)
        {
            double value =
                (curve.Interpolate(nm) / peak * (1 + Normal.Sample(random, 0, Noise)))
                + Normal.Sample(random, 0, FloorShare);
            text.Append(CultureInfo.InvariantCulture, $"{nm}\t{40 * value:0.0000}\n");
        }
        return text.ToString();
    }

    private static string DecayText(Run run, Random random)
    {
        var text = new StringBuilder();
        text.Append(
            "# Invented decay of a strip poured and charged as the recipe says: made by the model with\n"
        );
        text.Append("# 1 % noise, by no instrument\n");
        text.Append("minutes;mcd/m2\n");
        foreach (double t in (double[])[1, 1.5, 2, 3, 4, 6, 8, 11, 15, 20, 30, 45, 60, 90, 120, 180, 240])
        {
            double value = run.Glow!.Photopic.LuminanceMcdM2(t) * (1 + Normal.Sample(random, 0, Noise));
            text.Append(CultureInfo.InvariantCulture, $"{t};{value:0.00}\n");
        }
        return text.ToString();
    }
}
