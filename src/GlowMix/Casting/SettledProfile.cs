using System.Collections.Immutable;
using GlowMix.Afterglow;
using GlowMix.Spectra;

namespace GlowMix.Casting;

/// <summary>A layer after its grains have fallen: a bed, then slices with ever fewer classes of grain, then clear resin. Immutable.</summary>
/// <remarks>
/// Each class falls as one, at its own speed in the mix as poured, and stops on the bed. Above the bed a class keeps the
/// concentration it was poured with up to its own upper edge (Kynch 1952 for one class; that the coarse ones leaving speeds up
/// the fine ones is neglected). The pigment of each class is conserved exactly.
/// </remarks>
public sealed class SettledProfile
{
    // Thinner than any grain: such a slice is joined to its neighbour.
    private const double ThinnestMm = 0.001;

    // Grains whose height is kept to a thousandth of the depth are where they are, for all that light sees of them. Where there
    // is much pigment light falls off steeply, and no more of it may move than of this much, mm of solid pigment.
    private const double LeastShiftOfDepth = 1e-3;
    private const double MuchPigmentMm = 0.25;

    private SettledProfile(double bedMm, ImmutableArray<SettledSublayer> fromTheBedUp)
    {
        BedMm = bedMm;
        FromTheBedUp = fromTheBedUp;
    }

    /// <summary>Thickness of the bed, mm; 0 where nothing has landed.</summary>
    public double BedMm { get; }

    /// <summary>The slices in order of height while the resin gelled, at most seven.</summary>
    public ImmutableArray<SettledSublayer> FromTheBedUp { get; }

    /// <summary>The slices from the board up.</summary>
    /// <param name="isFaceUp">Whether the viewer's side was up while the resin gelled: then the bed is at the board's side.</param>
    public ImmutableArray<SettledSublayer> FromTheBoardUp(bool isFaceUp) =>
        isFaceUp ? FromTheBedUp : [.. FromTheBedUp.Reverse()];

    /// <summary>With neighbours joined that hardly differ: where that moves the grains, on average, by less than 0.1 % of the depth.</summary>
    public SettledProfile Coarsened()
    {
        double depthMm = Total.Of(FromTheBedUp.AsSpan(), slice => slice.ThicknessMm);
        double pigmentMm = Total.Of(FromTheBedUp.AsSpan(), slice => slice.VolumeFraction * slice.ThicknessMm);
        double most = LeastShiftOfDepth * depthMm * Math.Min(pigmentMm, MuchPigmentMm);
        var slices = FromTheBedUp.ToList();
        while (slices.Count > 1)
        {
            int lower = 0;
            double least = double.PositiveInfinity;
            for (int i = 0; i < slices.Count - 1; i++)
            {
                double moved = MovedMm2(slices[i], slices[i + 1]);
                if (moved < least)
                {
                    (lower, least) = (i, moved);
                }
            }
            if (least > most)
            {
                break;
            }
            slices[lower] = Join(slices[lower], slices[lower + 1]);
            slices.RemoveAt(lower + 1);
        }
        return new(BedMm, [.. slices]);
    }

    /// <summary>Settles a layer.</summary>
    /// <param name="depthMm">Depth of the layer, mm.</param>
    /// <param name="volumeFraction">Grains over mix as poured, 0 to 1; each class has a fifth.</param>
    /// <param name="classFallsMm">How far each class falls where nothing stops it, mm, finest first and none less than the one before.</param>
    /// <param name="bedFraction">Volume fraction of the bed, 0 to 1. A mix as dense as that stays as it is.</param>
    public static SettledProfile Of(
        double depthMm,
        double volumeFraction,
        ReadOnlySpan<double> classFallsMm,
        double bedFraction
    )
    {
        Demand.Positive(depthMm, nameof(depthMm), "mm");
        Demand.Within(volumeFraction, 0, 1, nameof(volumeFraction), "");
        Demand.Within(bedFraction, 0, 1, nameof(bedFraction), "");
        Demand.Length(classFallsMm.Length, GrainClasses.Count, nameof(classFallsMm));
        Demand.NoneNegative(classFallsMm, nameof(classFallsMm), "mm");
        double[] falls = classFallsMm.ToArray();
        for (int i = 1; i < falls.Length; i++)
        {
            if (falls[i] < falls[i - 1])
            {
                throw new ArgumentException(
                    "The falls must be those of the finest grains first.",
                    nameof(classFallsMm)
                );
            }
        }
        double each = volumeFraction / GrainClasses.Count;
        if (volumeFraction >= bedFraction || falls[^1] == 0)
        {
            return new(0, [new(depthMm, [.. Enumerable.Repeat(each, GrainClasses.Count)])]);
        }
        double bedMm = BedOf(depthMm, each, falls, bedFraction);
        return new(bedMm, Joined(Slices(depthMm, each, falls, bedMm)));
    }

    // The bed holds what has left the slices above: bedFraction · bed = Σ each · min(depth, fall + bed), straight between the
    // heights at which a further class has come to lie in the bed altogether.
    private static double BedOf(double depthMm, double each, double[] falls, double bedFraction)
    {
        for (int whole = 0; whole <= falls.Length; whole++)
        {
            int falling = falls.Length - whole;
            double held = whole * depthMm;
            foreach (double fall in falls.AsSpan(0, falling))
            {
                held += fall;
            }
            double bed = each * held / (bedFraction - (falling * each));
            bool restStillFalls = falling == 0 || falls[falling - 1] + bed <= depthMm;
            bool wholeHasLanded = whole == 0 || falls[falling] + bed >= depthMm;
            if (restStillFalls && wholeHasLanded)
            {
                return bed;
            }
        }
        // Rounding at a height where a class has just landed: all of them have, to the last digit.
        return each * falls.Length * depthMm / bedFraction;
    }

    private static List<SettledSublayer> Slices(double depthMm, double each, double[] falls, double bedMm)
    {
        double[] edges = [.. falls.Select(fall => Math.Max(bedMm, depthMm - fall))];
        var slices = new List<SettledSublayer>();
        if (bedMm > 0)
        {
            slices.Add(new(bedMm, [.. edges.Select(edge => each * (depthMm - (edge - bedMm)) / bedMm)]));
        }
        double fromMm = bedMm;
        for (int coarsest = falls.Length - 1; coarsest >= 0; coarsest--)
        {
            int classes = coarsest + 1;
            if (edges[coarsest] > fromMm)
            {
                slices.Add(
                    new(
                        edges[coarsest] - fromMm,
                        [.. Enumerable.Range(0, falls.Length).Select(i => i < classes ? each : 0)]
                    )
                );
                fromMm = edges[coarsest];
            }
        }
        if (depthMm > fromMm)
        {
            slices.Add(new(depthMm - fromMm, [.. Enumerable.Repeat(0.0, falls.Length)]));
        }
        return slices;
    }

    private static ImmutableArray<SettledSublayer> Joined(List<SettledSublayer> slices)
    {
        for (int i = 0; i < slices.Count; i++)
        {
            if (slices[i].ThicknessMm < ThinnestMm && slices.Count > 1)
            {
                int other = i > 0 ? i - 1 : 1;
                slices[Math.Min(i, other)] = Join(slices[i], slices[other]);
                slices.RemoveAt(Math.Max(i, other));
                i = -1;
            }
        }
        return [.. slices];
    }

    // Pigment that joining moves, mm of it, times the way it goes: from one slice evenly to both is half of both.
    private static double MovedMm2(SettledSublayer a, SettledSublayer b)
    {
        double apart = 0;
        for (int i = 0; i < a.ClassFractions.Length; i++)
        {
            apart += Math.Abs(a.ClassFractions[i] - b.ClassFractions[i]);
        }
        return apart * a.ThicknessMm * b.ThicknessMm / 2;
    }

    private static SettledSublayer Join(SettledSublayer a, SettledSublayer b)
    {
        double thicknessMm = a.ThicknessMm + b.ThicknessMm;
        return new(
            thicknessMm,
            [
                .. a.ClassFractions.Zip(
                    b.ClassFractions,
                    (ofA, ofB) => ((ofA * a.ThicknessMm) + (ofB * b.ThicknessMm)) / thicknessMm
                ),
            ]
        );
    }
}
