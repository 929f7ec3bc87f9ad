using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Recipes;
using GlowMix.Spectra;

namespace GlowMix.Console.Starts;

/// <summary>A white LED from its spectrum or from the label of its reel.</summary>
internal sealed class LedStart : Starter
{
    // Of the shelf's matrices where one states no doubt of its own.
    private const double UsualFactor = 2;

    private static readonly (string Field, string Key)[] sizes =
    [
        ("window-radius-mm", "window_radius_mm"),
        ("package-height-mm", "package_height_mm"),
        ("package-length-mm", "package_length_mm"),
        ("package-width-mm", "package_width_mm"),
    ];

    /// <inheritdoc/>
    public override string Word => "led";

    /// <inheritdoc/>
    public override MaterialKind? Kind => MaterialKind.Led;

    /// <inheritdoc/>
    public override string Description => "A white LED from a spectrum file, or from the label of its reel.";

    /// <inheritdoc/>
    public override IReadOnlyList<StartField> Fields { get; } =
    [
        SpectrumAnswer.Field("its spectrum, bare: nm and value a line"),
        Keyed("cct-k", "led.cct_k", "K", "or the label's colour temperature") with
        {
            Applies = a => !a.Has("spectrum"),
            Question = "Colour temperature on the label in K",
        },
        Keyed("ra", "led.ra", "Ra", "the label's colour rendering") with
        {
            Applies = a => a.Has("cct-k"),
            Question = "Colour rendering Ra, empty if silent",
        },
        Keyed("flux-lm", "led.flux_lm", "lm", "lumens of one LED") with
        {
            Question = "Lumens of one LED",
        },
        Keyed("at-ma", "led.at_ma", "mA", "at this current") with
        {
            Question = "At how many mA",
        },
        Keyed("max-ma", "led.max_ma", "mA", "greatest steady current") with
        {
            Question = "Greatest steady current in mA, empty if silent",
        },
        .. sizes.Select(s => Keyed(s.Field, "led." + s.Key, "mm", SizeWords(s.Key))),
        LabelFields.Title,
    ];

    /// <inheritdoc/>
    public override string? ProblemOf(StartAnswers answers) =>
        answers.Has("spectrum") == answers.Has("cct-k")
            ? "needed: --spectrum with a file, or --cct-k of the label; one of them"
        : answers.Has("spectrum") && answers.Has("ra") ? "--ra goes with --cct-k; a spectrum has its own"
        : !answers.Has("flux-lm") || !answers.Has("at-ma")
            ? "needed: --flux-lm and --at-ma, both of the label"
        : answers.Number("max-ma") < answers.Number("at-ma")
            ? "--max-ma is below --at-ma; needed: at least that"
        : null;

    /// <inheritdoc/>
    public override StartTexts Make(StartAnswers answers, Shelf shelf, Func<string, FileText> open)
    {
        var (rows, problems) = SpectrumAnswer.Read(answers, open);
        if (rows is null && answers.Has("spectrum"))
        {
            return new([], problems);
        }
        var worked = Worked(answers, rows, shelf);
        if (worked.Led is not { } led)
        {
            string what = answers.Text("spectrum") ?? "--cct-k";
            return new([], [.. problems, new(what, null, worked.Problem!)]);
        }
        var text = LabelFields.Head(MaterialKind.Led, answers, $"White LED {answers.Name}");
        text.Comment(
            "What is not told is as in the nearest LED of the shelf, marked assumed: above all what the package makes of",
            "light sent back onto it, which sets the shift. A bare and a potted reading would tell."
        );
        if (rows is not null)
        {
            text.Table("spectrum", "at_nm", rows, SpectrumAnswer.SourceOf(answers));
        }
        else
        {
            text.Line("white:").Line($"  cct_k: {answers.Text("cct-k")}");
            if (answers.Text("ra") is { } ra)
            {
                text.Line($"  ra: {ra}");
            }
            text.Source("label; the bands are then a stand-in that gives this white");
        }
        text.Entry("flux_lm", answers.Number("flux-lm")!.Value, LabelFields.Label)
            .Entry("at_ma", answers.Number("at-ma")!.Value, LabelFields.Label);
        Write(text, "max_ma", led.MaxMa, answers.Has("max-ma"));
        Sourced<double>[] found =
        [
            led.WindowRadiusMm,
            led.PackageHeightMm,
            led.PackageLengthMm,
            led.PackageWidthMm,
        ];
        for (int i = 0; i < sizes.Length; i++)
        {
            Write(text, sizes[i].Key, found[i], answers.Has(sizes[i].Field));
        }
        Write(text, "filling_index", led.FillingIndex, isTold: false);
        WriteMatrix(text, led.ReturnMatrix);
        return new([text.ToString()], problems);
    }

    private static WorkedOutLed Worked(
        StartAnswers answers,
        IReadOnlyList<(double At, double Value)>? rows,
        Shelf shelf
    )
    {
        var ratings = new PackageRatings
        {
            FluxLm = answers.Number("flux-lm")!.Value,
            AtMa = answers.Number("at-ma")!.Value,
            MaxMa = answers.Number("max-ma"),
            WindowRadiusMm = answers.Number("window-radius-mm"),
            PackageHeightMm = answers.Number("package-height-mm"),
            PackageLengthMm = answers.Number("package-length-mm"),
            PackageWidthMm = answers.Number("package-width-mm"),
        };
        if (rows is null)
        {
            return LedFromLabel.Of(
                answers.Number("cct-k")!.Value,
                answers.Number("ra"),
                ratings,
                shelf.ShippedLeds(),
                answers.Name
            );
        }
        var table = TabulatedSpectrum.From([.. rows.Select(r => r.At)], [.. rows.Select(r => r.Value)]);
        return LedFromSpectrum.Of(
            ResampledSpectrum.From(table).Spectrum,
            ratings,
            shelf.ShippedLeds(),
            answers.Name
        );
    }

    private static void Write(StartText text, string key, Sourced<double> value, bool isTold) =>
        text.Entry(key, value.Value, isTold ? LabelFields.Label : value.Source);

    private static void WriteMatrix(StartText text, Sourced<ReturnMatrix> matrix)
    {
        string[] bands = ["die", "green", "red"];
        double[,] share = matrix.Value.ToArray();
        text.Line("return_matrix:");
        for (int from = 0; from < bands.Length; from++)
        {
            text.Line($"  from_{bands[from]}:");
            for (int into = from; into < bands.Length; into++)
            {
                text.Line($"    into_{bands[into]}: {NumberText.Write(Math.Round(share[into, from], 4))}");
            }
        }
        text.Line($"  factor: {BorrowedEntries.WidenedFactor(matrix.Doubt.Factor ?? UsualFactor)}")
            .Source(matrix.Source);
    }

    private static string SizeWords(string key) =>
        key switch
        {
            "window_radius_mm" => "radius of the emitting window",
            "package_height_mm" => "height of the package over the board",
            "package_length_mm" => "its longer side",
            _ => "its shorter side",
        };

    private static StartField Keyed(string name, string path, string unit, string description) =>
        StartField.Number(name, unit, description, RecipeKeys.Find(path)!.Range);
}
