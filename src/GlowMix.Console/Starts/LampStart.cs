using GlowMix.Colour;
using GlowMix.Documents;
using GlowMix.Materials;
using GlowMix.Spectra;

namespace GlowMix.Console.Starts;

/// <summary>A lamp that charges from above: from its spectrum, its colour temperature, or the peak of its band.</summary>
internal sealed class LampStart : Starter
{
    private const double UsualWidthNm = 20;
    private static readonly string[] ways = ["spectrum", "cct-k", "peak-nm"];

    /// <inheritdoc/>
    public override string Word => "lamp";

    /// <inheritdoc/>
    public override MaterialKind? Kind => MaterialKind.Lamp;

    /// <inheritdoc/>
    public override string Description =>
        "A lamp that charges: from a spectrum file, the label of a white LED lamp, or the peak of a torch.";

    /// <inheritdoc/>
    public override IReadOnlyList<StartField> Fields { get; } =
    [
        SpectrumAnswer.Field("its spectrum: nm and value a line"),
        StartField.Number(
            "cct-k",
            "K",
            "or the colour temperature of a white LED lamp",
            NumberRange.Between(1800, 12_000)
        ) with
        {
            Applies = a => !a.Has("spectrum"),
            Question = "Colour temperature of a white LED lamp in K, empty if it is not one",
        },
        StartField.Number(
            "peak-nm",
            "nm",
            "or where a torch's band peaks",
            NumberRange.Between(WavelengthGrid.FirstNm, WavelengthGrid.LastNm)
        ) with
        {
            Applies = a => !a.Has("spectrum") && !a.Has("cct-k"),
            Question = "Peak of its band in nm",
        },
        StartField.Number(
            "fwhm-nm",
            "nm",
            "width of that band at half height; 20 if not given",
            NumberRange.Between(5, 300)
        ),
        LabelFields.Title,
    ];

    /// <inheritdoc/>
    public override string? ProblemOf(StartAnswers answers) =>
        ways.Count(answers.Has) != 1 ? "needed: one of --spectrum, --cct-k and --peak-nm"
        : answers.Has("fwhm-nm") && !answers.Has("peak-nm") ? "--fwhm-nm goes with --peak-nm"
        : null;

    /// <inheritdoc/>
    public override StartTexts Make(StartAnswers answers, Shelf shelf, Func<string, FileText> open)
    {
        var (rows, problems) = SpectrumAnswer.Read(answers, open);
        if (rows is null && answers.Has("spectrum"))
        {
            return new([], problems);
        }
        var text = LabelFields.Head(MaterialKind.Lamp, answers, $"Lamp {answers.Name}");
        if (rows is not null)
        {
            text.Table("spectrum", "at_nm", rows, SpectrumAnswer.SourceOf(answers))
                .Line("below_start: unknown", "or 'nothing', if you know that none is there");
        }
        else if (answers.Number("peak-nm") is { } peak)
        {
            WriteBand(text, answers, peak);
        }
        else
        {
            var nearest = NearestWhite(shelf, answers.Number("cct-k")!.Value);
            text.Comment(
                $"The label says {answers.Text("cct-k")} K; a lamp's blue, which charges, differs between makes. A spectrum would tell."
            );
            new BorrowedEntries(nearest).Write(
                text,
                _ => false,
                new Dictionary<string, string> { ["spectrum"] = "factor: 1.5" }
            );
        }
        return new([text.ToString()], problems);
    }

    private static void WriteBand(StartText text, StartAnswers answers, double peak)
    {
        // Below this the light is not seen, and harms the eyes all the same.
        if (peak < 420)
        {
            text.Line("cautions:")
                .Line(
                    "  - Do not look into it; wear glasses that stop ultraviolet and violet light, and keep it off skin."
                );
        }
        double width = answers.Number("fwhm-nm") ?? UsualWidthNm;
        text.Line("spectrum:")
            .Line($"  peak_nm: {NumberText.Write(peak)}")
            .Line($"  fwhm_nm: {NumberText.Write(width)}")
            .Source(answers.Has("fwhm-nm") ? LabelFields.Label : "label; its width is assumed")
            .Line("below_start: nothing");
    }

    private static Lamp NearestWhite(Shelf shelf, double cctK) =>
        Shelf
            .ShippedNames(MaterialKind.Lamp)
            .Where(name => name.StartsWith("led-", StringComparison.Ordinal))
            .Select(name => shelf.Lamp(name).Material!)
            .MinBy(lamp =>
                Math.Abs(
                    (1 / (ColourFigures.Of(lamp.RelativeSpectrum.Value).CctK ?? double.NaN)) - (1 / cctK)
                )
            )!;
}
