using GlowMix.Predictions;

namespace GlowMix.Readings.Spectral;

/// <summary>What keeps a reading's colour from being trusted, each with its effect.</summary>
internal static class SpectrumChecks
{
    /// <summary>The warnings, heaviest kind first.</summary>
    public static IEnumerable<Warning> Of(ReadingFigures figures)
    {
        if (!figures.Reading.IsColourTrustworthy)
        {
            yield return new(
                "raw_counts",
                "cct_k",
                "raw counts: colour not trustworthy; the instrument's response is still in them, say --corrected yes if it is not, or give a reading of a known lamp with --known-lamp"
            );
        }
        else if (figures.Reading is { Unit: SpectralUnit.Relative, IsCorrected: null })
        {
            yield return new(
                "taken_as_corrected",
                "cct_k",
                "taken as corrected for the instrument's response; no unit is told, say --corrected no if it is not"
            );
        }
        IEnumerable<Warning?> found =
        [
            Saturation.Check(figures),
            MissingEnds.Check(figures, isShortEnd: true),
            MissingEnds.Check(figures, isShortEnd: false),
            CoarseSteps.Check(figures),
            Pedestal.Check(figures),
            Pedestal.CheckCut(figures),
            Noise.Check(figures),
        ];
        foreach (Warning? warning in found)
        {
            if (warning is not null)
            {
                yield return warning;
            }
        }
        if (figures.Colour.Rendering is not null && !figures.Colour.RaMeaningful)
        {
            yield return new(
                "ra_not_meaningful",
                "ra",
                ReadingTexts.Invariant(
                    $"Ra says little here; the light is {figures.Colour.Rendering.ReferenceDistance:0.0000} from its reference in u, v, and CIE 13.3-1995 allows 0.0054"
                )
            );
        }
    }
}
