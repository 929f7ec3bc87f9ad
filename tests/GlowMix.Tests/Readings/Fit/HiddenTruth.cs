using System.Collections.Immutable;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Pieces;
using GlowMix.Predictions;
using GlowMix.Readings.Fit;
using GlowMix.Spectra;
using GlowMix.Tests.Predictions;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Interpolation;

namespace GlowMix.Tests.Readings.Fit;

/// <summary>
/// Readings that the model makes of materials other than those of the shelf, on a grid of its own, with noise: what a fit has to find
/// again. All invented.
/// </summary>
internal sealed record HiddenTruth
{
    /// <summary>An uneven step, no multiple of the model's.</summary>
    private const double StepNm = 1.3;

    public const string Pigment = "green-aluminate";

    public double ResinFactor { get; init; } = 1;

    /// <summary>In the order of the return matrix's keys; null for the shelf's.</summary>
    public ImmutableArray<double>? ReturnEntries { get; init; }

    public double Strength { get; init; } = 1;

    public double? Yield { get; init; }

    public double TrapLevel { get; init; } = 1;

    public double TrapTilt { get; init; }

    public double Trapping { get; init; } = 1;

    /// <summary>Time whose rung the tilt leaves alone, min: the middle of the readings'.</summary>
    public double MiddleMinutes { get; init; } = 10;

    public static Piece PieceOf(TestRecipe recipe) => TestRecipe.Predictor.Check(recipe.Document).Piece!;

    /// <summary>A piece of the true materials.</summary>
    public Piece True(Piece piece)
    {
        var pigment = piece.Layers.FirstOrDefault(l => l.HasPigment)?.Pigment;
        var calibration = new Calibration
        {
            Name = "truth",
            Date = "2026-01-01",
            RecipeName = "a.yaml",
            Readings = [],
            Led = ReturnEntries is { } entries
                ? new()
                {
                    Material = piece.Led.Name,
                    // A bare spectrum tells bands by the rule it is split by: the true bands are those that this rule finds without
                    // noise.
                    BareSpectrum = piece.Led.BareShapePerNm,
                    ReturnEntries = [.. entries.Select(e => new CalibratedNumber(e, null))],
                }
                : null,
            Resin = new() { Material = piece.Resin.Name, AbsorptionFactor = new(ResinFactor, null) },
            Pigments = pigment is null ? [] : [Told(pigment)],
        };
        return piece with
        {
            Led = calibration.Of(piece.Led),
            Resin = calibration.Of(piece.Resin),
            Layers =
            [
                .. piece.Layers.Select(l =>
                    l.Pigment is null ? l : l with { Pigment = calibration.Of(l.Pigment) }
                ),
            ],
        };
    }

    /// <summary>What a spectrometer shows of bare and lit, with noise in proportion.</summary>
    public static TabulatedSpectrum Seen(Spectrum wPerNm, double noise, Random random)
    {
        var nm = new List<double>();
        for (double at = 361.7; at < 779; at += StepNm)
        {
            nm.Add(at);
        }
        var curve = CubicSpline.InterpolateNaturalSorted(
            [.. Enumerable.Range(0, WavelengthGrid.Count).Select(i => (double)WavelengthGrid.NmAt(i))],
            wPerNm.Samples.ToArray()
        );
        return TabulatedSpectrum.From(
            [.. nm],
            [.. nm.Select(at => curve.Interpolate(at) * (1 + Normal.Sample(random, 0, noise)))]
        );
    }

    /// <summary>What a luminance meter shows.</summary>
    public static GlowReading Decay(
        string name,
        Piece piece,
        Run truth,
        IEnumerable<double> minutes,
        double noise,
        Random random
    ) =>
        new(
            name,
            "decay",
            piece,
            [
                .. minutes.Select(t => new SheetPoint(
                    t,
                    truth.Glow!.Photopic.LuminanceMcdM2(t) * (1 + Normal.Sample(random, 0, noise))
                )),
            ],
            NoisePercent: 100 * noise
        );

    /// <summary>The true run of a piece.</summary>
    public Run RunOf(Piece piece)
    {
        var real = True(piece);
        return TestRecipe.Predictor.LikelyRun(
            real,
            GlowMix.Optics.Pour.PourOptics.Of(TestRecipe.Predictor.StackOf(real))
        );
    }

    private CalibratedPigment Told(Pigment pigment)
    {
        var told = new FitPigment(pigment)
        {
            TrapLevel = TrapLevel,
            TrapTilt = TrapTilt,
            Trapping = Trapping,
        };
        var ladder = told.LadderOf(TestRecipe.Predictor.LadderOf(pigment).Fit!.Ladder!, MiddleMinutes);
        return new()
        {
            Material = pigment.Name,
            AbsorptionFactor = new(Strength, null),
            PhotoluminescenceYield = Yield is double y ? new(y, null) : null,
            Traps = new(
                [.. ladder.TrapsPerMm3.ToArray().Select(n => n * 1000 / pigment.DensityGPerCm3.Value)],
                ladder.TrappingEfficiencyAt20C,
                60
            ),
        };
    }
}
