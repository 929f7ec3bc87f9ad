using System.Collections.Immutable;
using GlowMix.Choosing;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Materials.Calibrations;
using GlowMix.Predictions;
using GlowMix.Recipes;
using GlowMix.Tests.Materials;
using GlowMix.Tests.Materials.Calibrations;
using GlowMix.Tests.Predictions;

namespace GlowMix.Tests.Pieces;

public sealed class CalibratedPieceTests
{
    private static readonly string Recipe = new TestRecipe { Led = "warm-white-3000" }.Text;

    [Fact]
    public void A_calibration_replaces_what_files_say_and_leaves_the_shelf_alone()
    {
        var predictor = PredictorWith(CalibrationText.Of(WithoutSpectrum));
        var (piece, problems) = predictor.Check(Document(calibrated: true));
        Assert.Empty(problems);
        var plain = predictor.Check(Document(calibrated: false)).Piece!;
        var (own, shelf) = (piece!.Layers[0].Pigment!, plain.Layers[0].Pigment!);
        Assert.Equal(1.3 * shelf.AbsorptionPerMm.Value[20], own.AbsorptionPerMm.Value[20], 12);
        Assert.Equal(0.7, own.PhotoluminescenceYield.Value);
        Assert.Equal(0.28, piece.Led.ReturnMatrix.Value[1, 0]);
        Assert.Equal(1.4 * plain.Resin.AbsorptionPerMm.Value[20], piece.Resin.AbsorptionPerMm.Value[20], 12);
        Assert.Null(shelf.Traps);
        Assert.Same(own, predictor.Check(Document(calibrated: true)).Piece!.Layers[0].Pigment);
        Assert.Equal("a.calibration.yaml of 2026-03-31, 2 readings", piece.Calibration!.InWords);
    }

    [Fact]
    public void Bands_of_a_calibrated_piece_are_narrower_and_what_was_read_needs_no_calibration()
    {
        var predictor = PredictorWith(CalibrationText.Of(WithoutSpectrum));
        var plain = predictor.Predict(Document(calibrated: false)).Prediction!;
        var own = predictor.Predict(Document(calibrated: true)).Prediction!;
        Assert.InRange(Width(own, "lit.duv") / Width(plain, "lit.duv"), 0.01, 0.2);
        Assert.Contains(plain.Assumptions, a => a.What == "grain absorption of green-aluminate");
        Assert.DoesNotContain(own.Assumptions, a => a.What == "grain absorption of green-aluminate");
        Assert.Equal("a.calibration.yaml of 2026-03-31, 2 readings", own.CalibratedBy);
    }

    [Fact]
    public void Draws_take_up_the_errors_of_a_measured_ladder_and_how_they_go_together()
    {
        // Traps that no reading counted are as doubtful as on the shelf.
        double unread = DrawnWidthOf(new(1, null), new(0, null), []);
        double level = DrawnWidthOf(new(1, 0.1), new(0, null), []);
        double apart = DrawnWidthOf(new(1, 0.1), new(0, 0.2), []);
        double together = DrawnWidthOf(new(1, 0.1), new(0, 0.2), [Tied(0.95)]);
        double against = DrawnWidthOf(new(1, 0.1), new(0, 0.2), [Tied(-0.95)]);
        Assert.InRange(unread, 1.5 * level, 10 * level);
        Assert.InRange(apart, 1.05 * level, 10 * level);
        // Late in the dark a ladder that leans to its slow end is brighter, and so is one with more traps.
        Assert.InRange(together, 1.05 * apart, 2 * apart);
        Assert.InRange(against, 0.2 * apart, 0.95 * apart);

        static CalibratedCorrelation Tied(double value) =>
            new("green-aluminate.trap_level", "green-aluminate.trap_tilt", value);
    }

    // Of the luminance after an hour.
    private static double DrawnWidthOf(
        CalibratedNumber level,
        CalibratedNumber tilt,
        ImmutableArray<CalibratedCorrelation> correlations
    )
    {
        var told = WithoutSpectrum;
        var pigment = told.Pigments[0] with
        {
            AbsorptionFactor = null,
            PhotoluminescenceYield = null,
            TrapLevel = level,
            TrapTilt = tilt,
        };
        var predictor = PredictorWith(
            CalibrationText.Of(
                new()
                {
                    Name = told.Name,
                    Date = told.Date,
                    RecipeName = told.RecipeName,
                    Readings = told.Readings,
                    Pigments = [pigment],
                    Correlations = correlations,
                }
            )
        );
        return Width(
            new Forecaster(predictor).Drawn(Document(calibrated: true)).Prediction!,
            "afterglow.luminance_mcd_m2[60]"
        );
    }

    [Fact]
    public void A_calibration_of_another_piece_or_of_materials_that_changed_since_is_warned_about()
    {
        string text = CalibrationText
            .Of(WithoutSpectrum)
            .Replace("epoxy-clear-slow", "silicone-clear", StringComparison.Ordinal);
        string hash = Sha256.Of(new Shelf().Led("warm-white-3000").Material!)!;
        var problems = PredictorWith(text.Replace(hash, new string('0', 64), StringComparison.Ordinal))
            .Check(Document(calibrated: true))
            .Problems;
        Assert.Equal(
            [
                "a.yaml:1:14: the calibration tells of silicone-clear, which is not in this piece; that part is not used",
                "a.yaml:1:14: warm-white-3000 has changed since the calibration was fitted; fit again with 'glowmix fit'",
            ],
            problems.Select(p => p.ToString()).Order()
        );
        Assert.All(problems, p => Assert.Equal(Severity.Warning, p.Severity));
    }

    [Fact]
    public void A_missing_calibration_is_an_error_of_access()
    {
        var problem = Assert.Single(
            new Predictor(new Shelf(new InMemoryMaterials()), new InMemoryMaterials())
                .Check(Document(calibrated: true))
                .Problems
        );
        Assert.Equal(ProblemKind.FileAccess, problem.Kind);
    }

    private static Calibration WithoutSpectrum
    {
        get
        {
            var whole = SampleCalibration.Whole;
            return new()
            {
                Name = whole.Name,
                Date = whole.Date,
                RecipeName = whole.RecipeName,
                Readings = whole.Readings,
                Led = whole.Led! with { BareSpectrum = null, Shares = [] },
                Resin = whole.Resin,
                Pigments = whole.Pigments,
            };
        }
    }

    private static double Width(Prediction prediction, string figure)
    {
        var band = prediction.Bands.First(b => b.Key.Name == figure).Value;
        return band.High!.Value - band.Low!.Value;
    }

    private static Predictor PredictorWith(string calibration)
    {
        var files = new InMemoryMaterials(("a.calibration.yaml", calibration));
        return new(new Shelf(files), files);
    }

    private static RecipeDocument Document(bool calibrated) =>
        RecipeDocument.Read(
            calibrated
                ? Recipe.Replace(
                    "format: 1\n",
                    "calibration: a.calibration.yaml\nformat: 1\n",
                    StringComparison.Ordinal
                )
                : Recipe,
            "a.yaml"
        );
}
