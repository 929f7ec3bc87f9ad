using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Pieces;

/// <summary>An LED that is on no shelf: known from its label, or from a measured spectrum.</summary>
/// <param name="Led">Null if there is a problem.</param>
/// <param name="KeyPath">The recipe's key that tells of it.</param>
/// <param name="Problem">What is wrong with that key's value; null if nothing is.</param>
/// <param name="OfFile">Errors and warnings of the spectrum's own file.</param>
internal sealed record LedWithoutFile(
    Led? Led,
    string KeyPath,
    string? Problem,
    ImmutableArray<Problem> OfFile
)
{
    // What lies beyond hardly moves the colour of a white LED.
    private const int FirstNeededNm = 400;
    private const int LastNeededNm = 700;

    /// <summary>Works the LED out.</summary>
    /// <param name="source">By label or by spectrum.</param>
    /// <param name="shelf">The shelf whose shipped LEDs it leans on.</param>
    /// <param name="files">Where the spectrum's path leads; null if nowhere.</param>
    public static LedWithoutFile Of(LedSource source, Shelf shelf, IMaterialSource? files) =>
        source switch
        {
            LedByLabel label => Of(
                LedFromLabel.Of(
                    label.CctK,
                    label.Ra,
                    RatingsOf(label.Ratings),
                    shelf.ShippedLeds(),
                    "the label's LED"
                ),
                "led.cct_k",
                []
            ),
            LedBySpectrum measured => Of(measured, shelf, files),
            _ => throw new ArgumentException(
                $"An LED told by {source.GetType().Name} is not known.",
                nameof(source)
            ),
        };

    private static LedWithoutFile Of(LedBySpectrum measured, Shelf shelf, IMaterialSource? files)
    {
        const string KeyPath = "led.spectrum";
        string path = measured.SpectrumPath;
        if (files is null)
        {
            return new(null, KeyPath, PieceTexts.NoFiles(path), []);
        }
        var file = SpectrumFile.Read(files.Open(path));
        if (file.Table is not { } table)
        {
            return new(null, KeyPath, null, file.Problems);
        }
        var resampled = ResampledSpectrum.From(table);
        var problems = resampled.IsInterpolated
            ? file.Problems.Add(
                new(path, null, PieceTexts.CoarseSpectrum(resampled.WidestStepNm), Severity.Warning)
            )
            : file.Problems;
        if (!(resampled.FirstKnownNm <= FirstNeededNm && resampled.LastKnownNm >= LastNeededNm))
        {
            problems = problems.Add(new(path, null, PieceTexts.ShortSpectrum(table), Severity.Warning));
        }
        return Of(
            LedFromSpectrum.Of(resampled.Spectrum, RatingsOf(measured.Ratings), shelf.ShippedLeds(), path),
            KeyPath,
            problems
        );
    }

    private static LedWithoutFile Of(WorkedOutLed led, string keyPath, ImmutableArray<Problem> ofFile) =>
        new(led.Led, keyPath, led.Problem, ofFile);

    private static PackageRatings RatingsOf(LedRatings told) =>
        new()
        {
            FluxLm = told.FluxLm,
            AtMa = told.AtMa,
            FluxDoubt = told.FluxTolerancePercent is double percent ? Doubt.OfPercent(percent) : default,
            MaxMa = told.MaxMa,
            WindowRadiusMm = told.WindowRadiusMm,
            PackageHeightMm = told.PackageHeightMm,
            PackageLengthMm = told.PackageLengthMm,
            PackageWidthMm = told.PackageWidthMm,
        };
}
