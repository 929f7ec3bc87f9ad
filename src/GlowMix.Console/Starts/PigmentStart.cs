using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Recipes;

namespace GlowMix.Console.Starts;

/// <summary>A pigment from its sheet or its bag.</summary>
internal sealed class PigmentStart : Starter
{
    // Of the shipped pigments those that a glow colour tells apart.
    private static readonly (string Colour, string Name)[] colours =
    [
        ("green", "green-aluminate"),
        ("blue-green", "blue-green-aluminate"),
        ("violet-blue", "violet-blue-aluminate"),
    ];

    private const double FullPercent = 50;

    private static readonly NumberRange PeakNm = NumberRange.Between(380, 740);
    private static readonly NumberRange GrainUm = NumberRange.Between(0.5, 300);

    /// <inheritdoc/>
    public override string Word => "pigment";

    /// <inheritdoc/>
    public override MaterialKind? Kind => MaterialKind.Pigment;

    /// <inheritdoc/>
    public override string Description =>
        "An afterglow pigment from its sheet or its bag: glow colour, grain, luminance after a stated charge.";

    /// <inheritdoc/>
    public override IReadOnlyList<StartField> Fields { get; } =
    [
        new("glow-colour", "COLOUR", "green, blue-green, violet-blue, or where its emission peaks, in nm")
        {
            Words = [.. colours.Select(c => c.Colour)],
            OrNumber = PeakNm,
            Question = "Glow colour: green, blue-green or violet-blue; or its peak in nm",
        },
        StartField.Number(
            "grain-from-um",
            "um",
            "smallest grain on the bag, taken as the 10 % point",
            GrainUm
        ) with
        {
            Question = "Grain from, in µm, empty if silent",
        },
        StartField.Number(
            "grain-to-um",
            "um",
            "largest grain on the bag, taken as the 90 % point",
            GrainUm
        ) with
        {
            Applies = a => a.Has("grain-from-um"),
            Question = "Grain to, in µm",
        },
        StartField.Number("grain-median-um", "um", "or its median diameter by mass", GrainUm),
        new(
            "luminance",
            "MIN=MCD",
            "minutes after the light, and mcd/m² then, such as 10=260; give it for each the sheet has"
        )
        {
            IsRepeated = true,
            Refusal = text =>
                LabelFields.Pair(text, '=') is (> 0 and <= 10_000, > 0 and <= 1e6)
                    ? null
                    : $"{ProblemTexts.Quote(text)} is not minutes=mcd/m², such as 10=260",
            Question =
                "Luminance as minutes=mcd/m², several with blanks between, such as 10=260 60=35; empty if silent",
        },
        StartField.Number(
            "charge-lx",
            "lx",
            "the sheet's charge: illuminance",
            NumberRange.Above(0, 200_000)
        ) with
        {
            Applies = a => a.Has("luminance"),
            Question = "The sheet's charge: how many lx, empty if silent",
        },
        StartField.Number(
            "charge-minutes",
            "min",
            "the sheet's charge: for how long",
            NumberRange.Above(0, 10_000)
        ) with
        {
            Applies = a => a.Has("luminance"),
            Question = "For how many minutes, empty if silent",
        },
        new("charge-lamp", "NAME", "the sheet's charge: a lamp of the shelf") { Kind = MaterialKind.Lamp },
        StartField.Number(
            "sheet-loading-percent",
            "%",
            "the sheet's sample: pigment by mass",
            NumberRange.Above(0, 80)
        ),
        StartField.Number("sheet-depth-mm", "mm", "the sheet's sample: its depth", NumberRange.Above(0, 50)),
        StartField.Number(
            "hours",
            "h",
            "hours of glow that the bag promises; kept as a comment only",
            NumberRange.Above(0, 1000)
        ) with
        {
            Question = "Hours of glow the bag promises, empty if silent",
        },
        StartField.Number("density-g-cm3", "g/cm3", "density of the grains", NumberRange.Between(0.5, 10)),
        LabelFields.Like(MaterialKind.Pigment),
        LabelFields.Title,
    ];

    /// <inheritdoc/>
    public override string? ProblemOf(StartAnswers answers)
    {
        if (!answers.Has("glow-colour") && !answers.Has("like"))
        {
            return "needed: --glow-colour with green, blue-green, violet-blue, or the peak of its emission in nm";
        }
        if (answers.Has("grain-from-um") != answers.Has("grain-to-um"))
        {
            return "--grain-from-um and --grain-to-um belong together";
        }
        if (answers.Has("grain-median-um") && answers.Has("grain-from-um"))
        {
            return "the grain is told twice; leave out --grain-median-um, or the two ends";
        }
        if (answers.Number("grain-from-um") >= answers.Number("grain-to-um"))
        {
            return ProblemTexts.OutOfRange(
                "--grain-to-um",
                answers.Number("grain-to-um")!.Value,
                NumberRange.Above(answers.Number("grain-from-um")!.Value, GrainUm.Most)
            );
        }
        var minutes = PointsOf(answers).Select(p => p.At).ToList();
        return minutes.Distinct().Count() < minutes.Count ? "--luminance: the same minutes twice" : null;
    }

    /// <inheritdoc/>
    public override StartTexts Make(StartAnswers answers, Shelf shelf, Func<string, FileText> open)
    {
        var nearest = shelf.Pigment(NearestOf(answers, shelf)).Material!;
        return new([.. SamplesOf(answers, nearest).Select(sample => TextOf(answers, nearest, sample))], []);
    }

    /// <inheritdoc/>
    public override string WhatWasTried =>
        "samples up to 3 mm deep with half their mass of pigment were tried; check the numbers and their charge, or tell the "
        + "sheet's own sample with --sheet-loading-percent and --sheet-depth-mm";

    // A thin sample of a strong pigment cannot hold the traps its sheet asks for: then a deeper or fuller one was measured.
    private static IEnumerable<(double LoadingPercent, double DepthMm)> SamplesOf(
        StartAnswers answers,
        Pigment nearest
    )
    {
        double usual = nearest.Sheet.LoadingPercent.Value;
        double[] loadings = answers.Number("sheet-loading-percent") is { } told
            ? [told]
            : [usual, FullPercent];
        foreach (double loading in loadings)
        {
            double[] depths = answers.Number("sheet-depth-mm") is { } depth ? [depth] : [1, 1.5, 2, 3];
            foreach (double depthMm in depths)
            {
                yield return (loading, depthMm);
            }
        }
    }

    private static string NearestOf(StartAnswers answers, Shelf shelf)
    {
        if (answers.Text("like") is { } like)
        {
            return like;
        }
        if (answers.Number("glow-colour") is { } nm)
        {
            return colours
                .MinBy(c => Math.Abs(shelf.Pigment(c.Name).Material!.EmissionPeakNm.Value - nm))
                .Name;
        }
        return colours.First(c => c.Colour == answers.Text("glow-colour")).Name;
    }

    private static string TextOf(
        StartAnswers answers,
        Pigment nearest,
        (double LoadingPercent, double DepthMm) sample
    )
    {
        var text = LabelFields.Head(
            MaterialKind.Pigment,
            answers,
            $"Afterglow pigment {answers.Name}, from its label"
        );
        LabelFields.WriteCautions(text, nearest);
        LabelFields.WriteLeaning(text, nearest);
        if (answers.Number("hours") is { } hours)
        {
            text.Comment(
                $"The label promises {NumberText.Write(hours)} hours of glow. That is not used: it tells neither the limit that ends them nor the",
                "charge before, so hours of two labels do not compare."
            );
        }
        var borrowed = new BorrowedEntries(nearest);
        var sheet = new SheetEntries(answers, nearest, sample);
        borrowed.Write(
            text,
            key => WriteTold(text, answers, key) || sheet.WriteTold(text, key),
            new Dictionary<string, string>
            {
                ["photoluminescence_yield"] = "tolerance_percent: 20",
                ["grain_median_um"] = "factor: 1.5",
                ["sheet_points"] = "factor: 2",
            }
        );
        return text.ToString();
    }

    private static bool WriteTold(StartText text, StartAnswers answers, string key)
    {
        switch (key)
        {
            case "density_g_cm3" when answers.Number("density-g-cm3") is { } density:
                text.Entry(key, density, LabelFields.Label);
                return true;
            case "emission_peak_nm" when answers.Number("glow-colour") is { } nm:
                text.Entry(key, nm, LabelFields.Label);
                return true;
            case "grain_median_um" when answers.Number("grain-median-um") is { } median:
                text.Entry(key, median, LabelFields.Label);
                return true;
            case "grain_median_um"
            or "grain_gsd"
                when answers.Number("grain-from-um") is { } from && answers.Number("grain-to-um") is { } to:
                string source =
                    $"label; {NumberText.Write(from)} to {NumberText.Write(to)} µm, taken as the 10 and 90 % points by mass, which is assumed";
                text.Entry(
                    key,
                    key == "grain_gsd"
                        ? Math.Round(Grain.GsdOfEnds(from, to), 3)
                        : Math.Round(Grain.MedianOfEndsUm(from, to), 1),
                    source
                );
                return true;
            default:
                return false;
        }
    }

    /// <summary>What was told of the decay, in the order of the minutes.</summary>
    internal static IReadOnlyList<(double At, double Value)> PointsOf(StartAnswers answers) =>
        [
            .. answers
                .Texts("luminance")
                .Select(text => LabelFields.Pair(text, '=')!.Value)
                .OrderBy(p => p.First),
        ];
}
