using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Starts;

/// <summary>A board's surface from its colour, a reflectance or a measured table.</summary>
internal sealed class BoardStart : Starter
{
    // Where a single number for a board is meant: the blue that charges, and the middle of the visible.
    private const int FirstNm = 440;
    private const int LastNm = 650;
    private const double MostShare = 0.98;

    // In air the surface of a coat alone sends back this much of diffuse light (index 1.5).
    private const double SurfaceShare = 0.092;

    private static readonly (string Colour, string Name)[] colours =
    [
        ("white", "white-mask"),
        ("green", "green-mask"),
        ("black", "black-mask"),
        ("metal", "bare-metal"),
    ];

    /// <inheritdoc/>
    public override string Word => "board";

    /// <inheritdoc/>
    public override MaterialKind? Kind => MaterialKind.Board;

    /// <inheritdoc/>
    public override string Description =>
        "A board's surface: its colour, how much light it sends back, or a measured table.";

    /// <inheritdoc/>
    public override IReadOnlyList<StartField> Fields { get; } =
    [
        new("colour", "WORD", "white, green, black or metal; white if not given")
        {
            Words = [.. colours.Select(c => c.Colour)],
            Usual = "white",
            Question = "Its colour: white, green, black or metal",
        },
        StartField.Number(
            "reflectance-percent",
            "%",
            "mean reflectance, 440 to 650 nm",
            NumberRange.Above(0, 98)
        ) with
        {
            Question = "Mean reflectance in %, empty if not known",
        },
        SpectrumAnswer.Field("or a table of nm and reflectance, 0 to 1"),
        new("taken", "WORD", "in-air or under-resin; in-air if not given")
        {
            Words = ["in-air", "under-resin"],
            Usual = "in-air",
            Applies = a => a.Has("reflectance-percent") || a.Has("spectrum"),
            Question = "Was that measured in-air or under-resin",
        },
        LabelFields.Title,
    ];

    /// <inheritdoc/>
    public override string? ProblemOf(StartAnswers answers) =>
        answers.Has("spectrum") && answers.Has("reflectance-percent")
            ? "the reflectance is told twice; leave out --reflectance-percent, or --spectrum"
            : null;

    /// <inheritdoc/>
    public override StartTexts Make(StartAnswers answers, Shelf shelf, Func<string, FileText> open)
    {
        var (rows, problems) = SpectrumAnswer.Read(answers, open);
        if (rows is null && answers.Has("spectrum"))
        {
            return new([], problems);
        }
        string colour = answers.Text("colour")!;
        var text = LabelFields.Head(
            MaterialKind.Board,
            answers,
            $"{char.ToUpperInvariant(colour[0])}{colour[1..]} board {answers.Name}"
        );
        bool isInAir =
            answers.Text("taken") == "in-air" && (rows is not null || answers.Has("reflectance-percent"));
        if (rows is not null)
        {
            text.Line(
                    $"taken: {(isInAir ? "in air" : "under resin")}",
                    "how it was measured; resin on it changes what comes back"
                )
                .Table(
                    "reflectance",
                    "at_nm",
                    rows,
                    SpectrumAnswer.SourceOf(answers),
                    "tolerance_percent: 5"
                );
            return new([text.ToString()], problems);
        }
        var nearest = shelf.Board(colours.First(c => c.Colour == colour).Name).Material!;
        LabelFields.WriteLeaning(text, nearest);
        var borrowed = new BorrowedEntries(nearest);
        borrowed.Write(
            text,
            key =>
            {
                if (answers.Number("reflectance-percent") is not { } percent)
                {
                    return false;
                }
                if (key == "taken")
                {
                    text.Line($"taken: {(isInAir ? "in air" : "under resin")}");
                    return true;
                }
                text.Table(
                    key,
                    "at_nm",
                    Scaled(nearest, percent / 100, isInAir ? SurfaceShare : 0),
                    $"label; mean of {NumberText.Write(percent)} %, its course over the colours as {nearest.Name}, assumed",
                    "tolerance_percent: 10"
                );
                return true;
            }
        );
        return StartTexts.Of(text.ToString());
    }

    private static IEnumerable<(double, double)> Scaled(Board nearest, double mean, double least)
    {
        var points = new List<(double Nm, double Share)>();
        var root = Document.Read(nearest.Origin!.Text, nearest.Name).Root!;
        foreach (var row in ((MappingNode)((MappingNode)root["reflectance"]!)["at_nm"]!).Entries)
        {
            NumberText.TryRead(row.Key.Value, out double nm);
            NumberText.TryRead(((ScalarNode)row.Value).Value, out double share);
            points.Add((nm, share));
        }
        double own = MeanOf(nearest);
        return points.Select(p => (p.Nm, Math.Round(Math.Clamp(p.Share * mean / own, least, MostShare), 4)));
    }

    private static double MeanOf(Board board)
    {
        var values = new List<double>();
        for (int i = 0; i < Spectra.WavelengthGrid.Count; i++)
        {
            if (Spectra.WavelengthGrid.NmAt(i) is >= FirstNm and <= LastNm)
            {
                values.Add(board.Reflectance.Value[i]);
            }
        }
        return values.Average();
    }
}
