using System.Collections.Immutable;
using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Optics;

namespace GlowMix.Materials;

/// <summary>Puts an LED together from its bands, what the user tells of the package, and the nearest shipped LED.</summary>
internal static class StandInLed
{
    // Densest resin the model is meant for: the more comes back, the more of a band the matrix claims to have made.
    private const double DensestResinIndex = 1.57;

    // Of what a band can hold, so much may come from conversion of returned light; the shipped LEDs stay below.
    private const double MostConvertedShare = 0.6;

    /// <summary>The shipped LED whose white is nearest, in reciprocal temperature.</summary>
    public static Led Nearest(IReadOnlyList<Led> shipped, double cctK) =>
        shipped.MinBy(led =>
            Math.Abs((1 / (ColourFigures.Of(led.BareShapePerNm).CctK ?? double.NaN)) - (1 / cctK))
        ) ?? throw new ArgumentException("There is no LED to lean on.", nameof(shipped));

    public static Led Of(
        string name,
        string title,
        string note,
        ImmutableArray<LedBand> bands,
        PackageRatings ratings,
        Led nearest
    )
    {
        var facts = ImmutableArray.CreateBuilder<MaterialFact>();
        var flux = new Sourced<double>(ratings.FluxLm, Told, ratings.FluxDoubt);
        Remember("flux_lm", flux);
        var atMa = new Sourced<double>(ratings.AtMa, Told);
        Remember("at_ma", atMa);
        var maxMa = ratings.MaxMa is { } most
            ? new Sourced<double>(most, Told)
            : new(
                ratings.AtMa,
                new(SourceMark.Assumed, "assumed; max_ma is not told, so the rated current is the greatest")
            );
        Remember("max_ma", maxMa);
        var window = Size("window_radius_mm", ratings.WindowRadiusMm, nearest.WindowRadiusMm);
        var height = Size("package_height_mm", ratings.PackageHeightMm, nearest.PackageHeightMm);
        var length = Size("package_length_mm", ratings.PackageLengthMm, nearest.PackageLengthMm);
        var width = Size("package_width_mm", ratings.PackageWidthMm, nearest.PackageWidthMm);
        string[] keys = ["die_share", "green_share", "red_share"];
        for (int i = 0; i < bands.Length; i++)
        {
            Remember(keys[i], bands[i].Share);
        }
        var filling = nearest.FillingIndex with { Note = Borrowed(nearest) };
        Remember("filling_index", filling);
        var matrix = new Sourced<ReturnMatrix>(
            Fitting(nearest.ReturnMatrix.Value, [.. bands.Select(band => band.Share.Value)]),
            Borrowed(nearest),
            nearest.ReturnMatrix.Doubt
        );
        facts.Add(new("return_matrix", "matrix", matrix.Note, matrix.Doubt));
        return new()
        {
            Name = name,
            Title = title,
            StandInNote = note,
            Die = bands[0],
            Green = bands[1],
            Red = bands[2],
            ReturnMatrix = matrix,
            FluxLm = flux,
            AtMa = atMa,
            MaxMa = maxMa,
            WindowRadiusMm = window,
            PackageHeightMm = height,
            PackageLengthMm = length,
            PackageWidthMm = width,
            FillingIndex = filling,
            Facts = facts.ToImmutable(),
        };

        Sourced<double> Size(string key, double? told, Sourced<double> other)
        {
            var size = told is { } mm ? new(mm, Told) : other with { Note = Borrowed(nearest) };
            Remember(key, size);
            return size;
        }

        void Remember(string key, Sourced<double> value) =>
            facts.Add(new(key, NumberText.Write(value.Value), value.Note, value.Doubt));
    }

    /// <summary>
    /// A matrix that leaves light of its own in each band: where the other LED's would claim more of a band than can be (a
    /// package with little red under a warmer LED's matrix), less is converted into that band and more sent back unchanged.
    /// </summary>
    internal static ReturnMatrix Fitting(ReturnMatrix matrix, double[] shares)
    {
        double returned = Fresnel.DiffuseFromInside(DensestResinIndex);
        double[,] m = matrix.ToArray();
        for (int into = 1; into < 3; into++)
        {
            double converted = 0;
            for (int from = 0; from < into; from++)
            {
                converted += m[into, from] * returned * shares[from];
            }
            double most = MostConvertedShare * (1 - (m[into, into] * returned)) * shares[into];
            if (converted <= most)
            {
                continue;
            }
            for (int from = 0; from < into; from++)
            {
                double less = m[into, from] * (1 - (most / converted));
                m[into, from] -= less;
                m[from, from] += less;
            }
        }
        return ReturnMatrix.From(m[0, 0], m[1, 0], m[2, 0], m[1, 1], m[2, 1], m[2, 2]);
    }

    private static SourceNote Told => new(SourceMark.Users, "label; as told in the recipe");

    private static SourceNote Borrowed(Led nearest) =>
        new(SourceMark.Assumed, $"assumed; as the nearest shipped LED, {nearest.Name}");
}
