using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Spectra;

namespace GlowMix.Materials;

/// <summary>
/// Bands for an LED of which only the label is known: they have its colour temperature, lie on the Planckian locus, and come
/// as near to its colour rendering as moving and widening the red band allows. A stand-in, and marked so.
/// </summary>
public static class LedFromLabel
{
    // Red phosphors peak from 600 to 650 nm (from memory); a little more at either end reaches labels of Ra 70 and 97.
    private const int FirstRedNm = 592;
    private const int LastRedNm = 660;
    private static readonly ImmutableArray<double> Widths = [1, 0.8, 1.25];

    private const double GreenShortFwhmNm = 80;
    private const double GreenLongFwhmNm = 130;
    private const double RedShortFwhmNm = 80;
    private const double RedLongFwhmNm = 110;
    private const double DieFwhmNm = 20;

    /// <summary>Works the LED out.</summary>
    /// <param name="cctK">Correlated colour temperature, K.</param>
    /// <param name="ra">General colour rendering index; null: the nearest shipped LED's bands as they are.</param>
    /// <param name="ratings">The rest of the label.</param>
    /// <param name="shipped">LEDs to lean on, at least one.</param>
    /// <param name="name">Name of the LED.</param>
    public static WorkedOutLed Of(
        double cctK,
        double? ra,
        PackageRatings ratings,
        IReadOnlyList<Led> shipped,
        string name
    )
    {
        var nearest = StandInLed.Nearest(shipped, cctK);
        var die = GaussianBand.PerNm(nearest.Die.PeakNm, DieFwhmNm);
        var green = GaussianBand.PerNm(nearest.Green.PeakNm, GreenShortFwhmNm, GreenLongFwhmNm);
        Mix? best = null;
        foreach (double width in Widths)
        {
            for (int redNm = FirstRedNm; redNm <= LastRedNm; redNm += 2)
            {
                var red = GaussianBand.PerNm(redNm, RedShortFwhmNm * width, RedLongFwhmNm * width);
                if (WhiteShares.Of([die, green, red], cctK) is not { } shares)
                {
                    continue;
                }
                var white = (shares[0] * die) + (shares[1] * green) + (shares[2] * red);
                double found = ColourFigures.Of(white).Ra ?? 0;
                double aside = (Math.Abs(redNm - nearest.Red.PeakNm) / 10) + (10 * Math.Abs(width - 1));
                var mix = new Mix(red, redNm, shares, found, Math.Abs(found - (ra ?? found)), aside);
                best = best is null || mix.IsBetterThan(best) ? mix : best;
            }
        }
        if (best is null)
        {
            return new(null, MaterialProblemTexts.NoWhiteOfThatTemperature(cctK));
        }
        var note = new SourceNote(
            SourceMark.Assumed,
            "assumed; a mix of band shapes that gives the label's white"
        );
        ImmutableArray<LedBand> bands =
        [
            new(die, nearest.Die.PeakNm, new(best.Shares[0], note)),
            new(green, nearest.Green.PeakNm, new(best.Shares[1], note)),
            new(best.RedPerNm, best.RedNm, new(best.Shares[2], note)),
        ];
        return new(
            StandInLed.Of(
                name,
                $"White LED of a label, {NumberText.Write(cctK)} K",
                MaterialProblemTexts.StandInOfLabel(nearest.Name, best.Ra, ra),
                bands,
                ratings,
                nearest
            ),
            null
        );
    }

    /// <summary>One trial: the nearer to the label the better, then the nearer to the usual band.</summary>
    private sealed record Mix(
        Spectrum RedPerNm,
        double RedNm,
        double[] Shares,
        double Ra,
        double Miss,
        double Aside
    )
    {
        // A label rounds Ra to whole numbers: within half of one no trial is better than another.
        public bool IsBetterThan(Mix other)
        {
            double mine = Math.Max(0, Miss - 0.5);
            double others = Math.Max(0, other.Miss - 0.5);
            return mine < others || (mine == others && Aside < other.Aside);
        }
    }
}
