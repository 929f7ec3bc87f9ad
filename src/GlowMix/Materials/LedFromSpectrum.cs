using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>
/// Splits a measured bare spectrum into die, green and red, so that the three add up to it exactly. How the package treats
/// returned light is taken from the nearest shipped LED.
/// </summary>
/// <remarks>
/// The die's own shape is read off its short side, where nothing else shines; the phosphor's are those of the nearest
/// shipped LED. Weights by NNLS, then each sample is shared out as the weighted shapes stand to each other.
/// </remarks>
public static class LedFromSpectrum
{
    private const double FirstDieNm = 400;
    private const double LastDieNm = 480;

    /// <summary>Works the LED out.</summary>
    /// <param name="relative">Bare spectrum in air, energy per nm in any unit; not below zero.</param>
    /// <param name="ratings">What the label says.</param>
    /// <param name="shipped">LEDs to lean on, at least one.</param>
    /// <param name="name">Name of the LED, such as the file of the spectrum.</param>
    public static WorkedOutLed Of(
        Spectrum relative,
        PackageRatings ratings,
        IReadOnlyList<Led> shipped,
        string name
    )
    {
        if (WrongWith(relative) is { } wrong)
        {
            return new(null, wrong);
        }
        if (ColourFigures.Of(relative).CctK is not { } cctK)
        {
            return new(null, MaterialProblemTexts.NotWhite);
        }
        var nearest = StandInLed.Nearest(shipped, cctK);
        var note = new SourceNote(SourceMark.Users, $"own reading; {name}, split by band shapes");
        var (bands, problem) = BandsOf(relative, nearest, note);
        return bands is { } split
            ? new(
                StandInLed.Of(
                    name,
                    $"White LED of {name}",
                    $"the LED's package is taken as of {nearest.Name}; the spectrum is the reading's, but what the package does with returning light it does not tell",
                    split,
                    ratings,
                    nearest
                ),
                null
            )
            : new(null, problem);
    }

    /// <summary>Splits a bare spectrum into the bands of an LED that is like it.</summary>
    /// <param name="relative">Bare spectrum in air, energy per nm in any unit; not below zero.</param>
    /// <param name="like">The LED whose phosphor's shapes it is split by.</param>
    /// <param name="note">Where the spectrum comes from.</param>
    /// <returns>Die, green and red; null, with the reason, if it cannot be split.</returns>
    internal static (ImmutableArray<LedBand>? Bands, string? Problem) BandsOf(
        Spectrum relative,
        Led like,
        SourceNote note
    )
    {
        if (WrongWith(relative) is { } wrong)
        {
            return (null, wrong);
        }
        var bare = 1 / relative.IntegralOverNm() * relative;
        if (Die(bare) is not var (dieShape, diePeakNm))
        {
            return (null, MaterialProblemTexts.NoDie(FirstDieNm, LastDieNm));
        }
        Spectrum[] shapes = [dieShape, like.Green.ShapePerNm, like.Red.ShapePerNm];
        double[] weights = Weights(bare, shapes);
        if (weights[0] == 0 || weights[1] + weights[2] == 0)
        {
            return (null, MaterialProblemTexts.NoPhosphor);
        }
        Spectrum[] model = [.. shapes.Zip(weights, (shape, weight) => weight * shape)];
        double[] peaksNm = [diePeakNm, like.Green.PeakNm, like.Red.PeakNm];
        return (
            [.. Enumerable.Range(0, 3).Select(band => Band(bare, model, shapes, band, peaksNm, note))],
            null
        );
    }

    private static string? WrongWith(Spectrum relative) =>
        relative.Samples.ContainsAnyInRange(double.NegativeInfinity, -double.Epsilon)
        || relative.IntegralOverNm() <= 0
            ? MaterialProblemTexts.SpectrumBelowZero
            : null;

    private static double[] Weights(Spectrum bare, Spectrum[] shapes)
    {
        var columns = new double[WavelengthGrid.Count, shapes.Length];
        for (int i = 0; i < WavelengthGrid.Count; i++)
        {
            for (int j = 0; j < shapes.Length; j++)
            {
                columns[i, j] = shapes[j][i];
            }
        }
        return NonNegativeLeastSquares.Solve(columns, bare.Samples.ToArray());
    }

    private static LedBand Band(
        Spectrum bare,
        Spectrum[] model,
        Spectrum[] shapes,
        int band,
        double[] peaksNm,
        SourceNote note
    )
    {
        var part = Spectrum.FromIndex(i => bare[i] * ShareAt(i, model, band, peaksNm));
        double share = part.IntegralOverNm();
        return new(
            share > 0 ? 1 / share * part : shapes[band],
            peaksNm[band],
            new Sourced<double>(share, note)
        );
    }

    private static double ShareAt(int index, Spectrum[] model, int band, double[] peaksNm)
    {
        // The phosphor starts behind the die: what a broad shape would claim before it is the die's flank.
        if (WavelengthGrid.NmAt(index) <= peaksNm[0])
        {
            return band == 0 ? 1 : 0;
        }
        double sum = model[0][index] + model[1][index] + model[2][index];
        // So far out that all shapes have vanished, only the longest can have been meant.
        return sum > 0 ? model[band][index] / sum
            : band == 2 ? 1
            : 0;
    }

    // The greatest peak in the blue, and a Gaussian as wide as its short side is at half height.
    private static (Spectrum ShapePerNm, double PeakNm)? Die(Spectrum bare)
    {
        int peak = -1;
        for (int i = 1; i < WavelengthGrid.Count - 1; i++)
        {
            double nm = WavelengthGrid.NmAt(i);
            bool isPeak = bare[i] > bare[i - 1] && bare[i] >= bare[i + 1];
            if (nm is >= FirstDieNm and <= LastDieNm && isPeak && (peak < 0 || bare[i] > bare[peak]))
            {
                peak = i;
            }
        }
        if (peak < 0)
        {
            return null;
        }
        // Vertex of the parabola through the peak and its neighbours, in steps of the grid.
        double bend = bare[peak - 1] - (2 * bare[peak]) + bare[peak + 1];
        double shift = bend < 0 ? (bare[peak - 1] - bare[peak + 1]) / (2 * bend) : 0;
        double peakNm = WavelengthGrid.NmAt(peak) + (WavelengthGrid.StepNm * shift);
        double half = (bare[peak] - ((bare[peak - 1] - bare[peak + 1]) * shift / 4)) / 2;
        for (int i = peak - 1; i >= 0; i--)
        {
            if (bare[i] <= half)
            {
                double share = (half - bare[i]) / (bare[i + 1] - bare[i]);
                double halfNm = WavelengthGrid.NmAt(i) + (WavelengthGrid.StepNm * share);
                double fwhmNm = 2 * (peakNm - halfNm);
                return (GaussianBand.PerNm(peakNm, fwhmNm), peakNm);
            }
        }
        return null;
    }
}
