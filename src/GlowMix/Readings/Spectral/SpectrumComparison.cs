using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Readings.Spectral;

/// <summary>
/// Two readings of one instrument: their ratio, which needs no correction, and where in the spectrum light was lost or won.
/// </summary>
public sealed record SpectrumComparison
{
    // Below this share of the other reading's peak the ratio is noise.
    private const double LeastOfPeak = 0.02;

    // A stated wavelength is scaled by what lies around it, so that one sample's noise does not set all.
    private const double ScaleOverNm = 5;

    private SpectrumComparison(
        ReadingFigures reading,
        ReadingFigures against,
        TabulatedSpectrum ratio,
        double? scaledAtNm
    ) => (Reading, Against, Ratio, ScaledAtNm) = (reading, against, ratio, scaledAtNm);

    /// <summary>The reading.</summary>
    public ReadingFigures Reading { get; }

    /// <summary>What it is compared with.</summary>
    public ReadingFigures Against { get; }

    /// <summary>Reading over the other, after scaling, where the other has light enough.</summary>
    public TabulatedSpectrum Ratio { get; }

    /// <summary>The wavelength at which both were made equal, nm; null at equal exposure.</summary>
    public double? ScaledAtNm { get; }

    /// <summary>Light in lm of the reading over the other, at equal exposure; null where scaled.</summary>
    public double? FluxRatio { get; private init; }

    private ImmutableArray<double> Smooth { get; init; }

    /// <summary>What each band holds over what it held, after scaling; null where it held none.</summary>
    public required ImmutableArray<(SpectralBand Band, double? Ratio)> Bands { get; init; }

    /// <summary>CCT of the reading minus that of the other, K; + is cooler.</summary>
    public double? ShiftK => Reading.Colour.CctK - Against.Colour.CctK;

    /// <summary>Distance in u′, v′; null without light in one of them.</summary>
    public double? UPrimeVPrime =>
        Reading.Colour.Chromaticity is { } a && Against.Colour.Chromaticity is { } b
            ? ColourDifference.UPrimeVPrime(a, b)
            : null;

    /// <summary>Where the ratio, smoothed over 5 nm, is least.</summary>
    public (double Nm, double Ratio) Least => Extreme((value, least) => value < least);

    /// <summary>Where it is greatest.</summary>
    public (double Nm, double Ratio) Most => Extreme((value, most) => value > most);

    /// <summary>Compares two readings.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="against">What to compare it with.</param>
    /// <param name="scaledAtNm">Where to make both equal, nm; null if both were taken with the same exposure.</param>
    /// <param name="problem">Why there is no comparison.</param>
    /// <returns>Null if there is a problem.</returns>
    public static SpectrumComparison? Of(
        ReadingFigures reading,
        ReadingFigures against,
        double? scaledAtNm,
        out string? problem
    )
    {
        problem = null;
        if (reading.Reading.Unit != against.Reading.Unit && scaledAtNm is null)
        {
            problem = SpectralTexts.UnitsDiffer(
                against.Reading.File,
                reading.Reading.Findings.LightUnit,
                against.Reading.Findings.LightUnit
            );
            return null;
        }
        if (OtherGrid.Of(reading.Visible, against.Visible) is not var (table, other, _))
        {
            problem = SpectralTexts.NoOverlap(against.Reading.File, reading.Visible, against.Visible);
            return null;
        }
        double scale = 1;
        TabulatedSpectrum otherTable = TabulatedSpectrum.From(table.WavelengthsNm, other);
        if (scaledAtNm is { } atNm)
        {
            WavelengthRange around = new(atNm - (ScaleOverNm / 2), atNm + (ScaleOverNm / 2));
            double own = SpectrumShape.Integral(table, around);
            double others = SpectrumShape.Integral(otherTable, around);
            if (own <= 0 || others <= 0)
            {
                problem = ReadingTexts.Invariant(
                    $"there is no light to scale by at {atNm} nm in both readings"
                );
                return null;
            }
            scale = others / own;
        }
        double least = LeastOfPeak * other.Max();
        double[] smoothOwn = SpectrumShape.Smoothed(table);
        double[] smoothOther = SpectrumShape.Smoothed(otherTable);
        var nm = new List<double>();
        var ratio = new List<double>();
        var smooth = new List<double>();
        for (int i = 0; i < other.Length; i++)
        {
            if (smoothOther[i] > least && other[i] > 0)
            {
                nm.Add(table.WavelengthsNm[i]);
                ratio.Add(scale * table.Values[i] / other[i]);
                smooth.Add(scale * smoothOwn[i] / smoothOther[i]);
            }
        }
        if (nm.Count < 2)
        {
            problem = $"{against.Reading.File} has too little light to compare with";
            return null;
        }
        return new(reading, against, TabulatedSpectrum.From([.. nm], [.. ratio]), scaledAtNm)
        {
            FluxRatio =
                scaledAtNm is null && against.Colour.LuminousFluxLm > 0
                    ? reading.Colour.LuminousFluxLm / against.Colour.LuminousFluxLm
                    : null,
            Smooth = [.. smooth],
            Bands =
            [
                .. SpectralBand.All.Select(b =>
                    (b, BandRatio(scale * SpectrumShape.Integral(table, b.Range), otherTable, b))
                ),
            ],
        };
    }

    private static double? BandRatio(double own, TabulatedSpectrum other, SpectralBand band)
    {
        double held = SpectrumShape.Integral(other, band.Range);
        double all = SpectrumShape.Integral(other, WavelengthRange.Visible);
        // A thousandth of the light says nothing of its band.
        return held > 1e-3 * all ? own / held : null;
    }

    private (double Nm, double Ratio) Extreme(Func<double, double, bool> isBeyond)
    {
        int at = 0;
        for (int i = 1; i < Ratio.Count; i++)
        {
            at = isBeyond(Smooth[i], Smooth[at]) ? i : at;
        }
        return (Ratio.WavelengthsNm[at], Smooth[at]);
    }
}
