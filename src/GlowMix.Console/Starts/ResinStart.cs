using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Starts;

/// <summary>A casting resin from its technical sheet.</summary>
internal sealed class ResinStart : Starter
{
    private const double ReferenceC = 25;

    // Dimethyl silicones lie near 1.41, phenyl silicones near 1.5.
    private const double BetweenSilicones = 1.46;

    private static readonly string[] epoxies = ["epoxy-clear-slow", "epoxy-clear-fast"];
    private static readonly NumberRange Density = NumberRange.Between(0.5, 10);
    private static readonly NumberRange TemperatureC = NumberRange.Between(-40, 120);
    private static readonly NumberRange Minutes = NumberRange.Above(0, 20_000);

    /// <inheritdoc/>
    public override string Word => "resin";

    /// <inheritdoc/>
    public override MaterialKind? Kind => MaterialKind.Resin;

    /// <inheritdoc/>
    public override string Description => "A clear casting resin from its technical sheet.";

    /// <inheritdoc/>
    public override IReadOnlyList<StartField> Fields { get; } =
    [
        new("family", "WORD", "epoxy, polyurethane or silicone")
        {
            Words = ["epoxy", "polyurethane", "silicone"],
            Question = "Epoxy, polyurethane or silicone",
        },
        new("mix-ratio", "A:B", "parts A to parts B, such as 2:1")
        {
            Refusal = text =>
                LabelFields.Pair(text, ':') is (> 0 and <= 1000, > 0 and <= 1000)
                    ? null
                    : $"{ProblemTexts.Quote(text)} is not parts A to parts B, such as 2:1",
            Question = "Mix ratio A:B, such as 2:1, empty if silent",
        },
        new("by", "WORD", "the ratio's measure: mass or volume; mass if not given")
        {
            Words = ["mass", "volume"],
            Usual = "mass",
            Applies = a => a.Has("mix-ratio"),
            Question = "By mass or volume",
        },
        StartField.Number(
            "viscosity-mpa-s",
            "mPa.s",
            "viscosity of the fresh mix",
            NumberRange.Above(0, 1e6)
        ) with
        {
            Question = "Viscosity of the mix in mPa·s, empty if silent",
        },
        StartField.Number("viscosity-at-c", "C", "at this temperature; 25 if not given", TemperatureC),
        StartField.Number("pot-life-min", "min", "pot life", Minutes) with
        {
            Question = "Pot life in minutes, empty if silent",
        },
        StartField.Number("pot-life-mass-g", "g", "of this mass", NumberRange.Above(0, 100_000)) with
        {
            Applies = a => a.Has("pot-life-min"),
            Question = "Of how many grams, empty if silent",
        },
        StartField.Number("pot-life-at-c", "C", "at this temperature; 25 if not given", TemperatureC),
        StartField.Number("gel-min", "min", "gel time of the same mass", Minutes),
        StartField.Number("density-g-cm3", "g/cm3", "density of the mix or the cured resin", Density) with
        {
            Question = "Density of the mix in g/cm³, empty if silent",
        },
        StartField.Number("density-a-g-cm3", "g/cm3", "density of part A", Density),
        StartField.Number("density-b-g-cm3", "g/cm3", "density of part B", Density),
        StartField.Number(
            "index",
            "n",
            "refractive index, cured, at 589 nm",
            NumberRange.Between(1.3, 1.7)
        ) with
        {
            Question = "Refractive index, empty if silent",
        },
        StartField.Number(
            "max-depth-mm",
            "mm",
            "deepest pour the sheet allows",
            NumberRange.Above(0, 1000)
        ) with
        {
            Question = "Deepest pour in mm, empty if silent",
        },
        StartField.Number("cure-full-h", "h", "time to full cure", NumberRange.Above(0, 2000)),
        LabelFields.Like(MaterialKind.Resin),
        LabelFields.Title,
    ];

    /// <inheritdoc/>
    public override string? ProblemOf(StartAnswers answers) =>
        answers.Has("family") || answers.Has("like")
            ? null
            : "needed: --family with epoxy, polyurethane or silicone";

    /// <inheritdoc/>
    public override StartTexts Make(StartAnswers answers, Shelf shelf, Func<string, FileText> open)
    {
        var nearest = shelf.Resin(NearestOf(answers, shelf)).Material!;
        var text = LabelFields.Head(
            MaterialKind.Resin,
            answers,
            $"Clear resin {answers.Name}, from its sheet"
        );
        LabelFields.WriteCautions(text, nearest);
        LabelFields.WriteLeaning(text, nearest);
        var sheet = new ResinEntries(answers, nearest);
        new BorrowedEntries(nearest).Write(
            text,
            key => sheet.WriteTold(text, key),
            new Dictionary<string, string>
            {
                ["viscosity"] = "factor: 1.5",
                ["pot_life"] = "factor: 1.5",
                ["gel_time_min"] = "factor: 1.5",
            }
        );
        return StartTexts.Of(text.ToString());
    }

    private static string NearestOf(StartAnswers answers, Shelf shelf)
    {
        if (answers.Text("like") is { } like)
        {
            return like;
        }
        return answers.Text("family") switch
        {
            "polyurethane" => "polyurethane-clear",
            "silicone" => answers.Number("index") > BetweenSilicones ? "silicone-phenyl" : "silicone-clear",
            _ when answers.Number("pot-life-min") is { } minutes => epoxies.MinBy(name =>
                Math.Abs(Math.Log(shelf.Resin(name).Material!.PotLives[0].Value.Minutes / minutes))
            )!,
            _ => "epoxy-clear-slow",
        };
    }

    /// <summary>The temperature a sheet's number holds for, and how it is known.</summary>
    internal static (double C, string Note) TemperatureOf(StartAnswers answers, string field) =>
        answers.Number(field) is { } told
            ? (told, LabelFields.Label)
            : (ReferenceC, "label; its temperature is not told, 25 °C is assumed");
}
