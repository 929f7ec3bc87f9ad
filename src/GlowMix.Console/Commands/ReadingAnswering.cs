using GlowMix.Documents;
using GlowMix.Readings;
using GlowMix.Readings.Decay;
using GlowMix.Readings.Files;
using GlowMix.Readings.Spectral;

namespace GlowMix.Console.Commands;

/// <summary>Makes of each file what is told of it.</summary>
/// <param name="steps">What every spectrum is put through.</param>
/// <param name="surroundings">Where problems are told.</param>
internal sealed class ReadingAnswering(ReadingSteps steps, Surroundings surroundings)
{
    // Where no exposure and no wavelength is told, both are made equal here, near the eye's peak.
    private const double UsualScaleNm = 555;

    /// <summary>The reading to compare spectra with, or null.</summary>
    public ReadingFigures? Against { get; set; }

    /// <summary>The prediction to compare with, or null.</summary>
    public PredictedPiece? Predicted { get; set; }

    /// <summary>Both readings were taken with the same exposure.</summary>
    public required bool IsEqualExposure { get; init; }

    /// <summary>Where to make both readings equal, nm; null where it is not told.</summary>
    public required double? ScaleNm { get; init; }

    /// <summary>How the meter looked at a glow; null where it is not told.</summary>
    public required MeterGeometry? Geometry { get; init; }

    /// <summary>The answer for a file that was read; null when the user has been told why there is none.</summary>
    public ReadingAnswer? Of(ReadingOutcome outcome, ref int code) =>
        outcome.Decay is { } decay ? Of(decay)
        : FiguresOf(outcome.Spectrum, ref code) is { } figures ? Of(figures, ref code)
        : null;

    /// <summary>Figures of a spectrum, put through all steps; null when the user has been told why there are none.</summary>
    public ReadingFigures? FiguresOf(SpectralReading? reading, ref int code)
    {
        if (reading is null || steps.Apply(reading, ref code) is not { } done)
        {
            return null;
        }
        var figures = ReadingFigures.Of(done);
        if (figures is null)
        {
            Tell(
                done.File,
                ReadingTexts.NothingVisible(done.Spectrum.FirstNm, done.Spectrum.LastNm),
                ref code
            );
        }
        return figures;
    }

    private ReadingAnswer Of(DecayReading decay)
    {
        var figures = DecayFigures.Of(Geometry?.ToLuminance(decay) ?? decay);
        return new(null, figures)
        {
            Geometry = Geometry,
            DecayPredicted = Predicted is null
                ? null
                : DecayAgainstPrediction.Of(figures, Predicted.Prediction),
        };
    }

    private ReadingAnswer Of(ReadingFigures figures, ref int code)
    {
        SpectrumComparison? comparison = null;
        if (Against is { } other)
        {
            // Power in a stated unit is equal exposure by nature.
            bool arePowers =
                figures.Reading.Unit == SpectralUnit.WPerM2Nm && other.Reading.Unit == SpectralUnit.WPerM2Nm;
            double? atNm = IsEqualExposure ? null : ScaleNm ?? (arePowers ? null : UsualScaleNm);
            comparison = SpectrumComparison.Of(figures, other, atNm, out string? problem);
            if (problem is not null)
            {
                Tell(figures.Reading.File, problem, ref code);
            }
        }
        return new(figures, null)
        {
            Comparison = comparison,
            Predicted = Predicted is { } predicted
                ? SpectrumAgainstPrediction.Of(
                    figures,
                    predicted.Prediction,
                    predicted.Piece,
                    predicted.Predictor
                )
                : null,
        };
    }

    private void Tell(string file, string problem, ref int code) =>
        code = Math.Max(code, Problems.Tell([new Problem(file, null, problem)], surroundings));
}
