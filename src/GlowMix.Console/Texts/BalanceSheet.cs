using GlowMix.Choosing;
using GlowMix.Colour;
using GlowMix.Console.Plots;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>Prints what a search for a balance found: what to take, what it was chosen from, and where targets can be met.</summary>
internal sealed class BalanceSheet(BalanceAnswer answer, string title, Sheet sheet)
{
    private const int MostRelaxations = 3;
    private const string Take = "take";

    private string AimedAt =>
        answer.WhiteCctK is double k ? $"a {Digits.Plain(k)} K white" : "the bare board's white";

    private Figure GlowFigure => FigureCatalogue.Find("afterglow.luminance_mcd_m2", answer.GlowAtMinutes)!;

    private bool Glows => answer.Front.Any(d => d.GlowMcdPerM2 > 0);

    /// <summary>Prints it.</summary>
    /// <param name="width">Columns a table or a map may take.</param>
    public void Print(int width)
    {
        sheet.Heading(title);
        sheet.Paragraph(Searched());
        sheet.Blank();
        if (answer.Recommended is { } best)
        {
            Recommend(best);
            Front(width);
        }
        else
        {
            Refuse();
        }
        Map(width);
        sheet.Blank();
        sheet.Row("Caution", Cautions.OneLine);
    }

    private string Searched()
    {
        string met =
            answer.GridCount == 0 ? ""
            : answer.Targets.IsEmpty ? "The recipe has no targets, so every one counts."
            : answer.GridFeasibleCount == 0 ? "None of an even grid of them meets every target."
            : $"Of an even grid of {answer.GridCount}, {answer.GridFeasibleCount} "
                + $"({Digits.Percent(100.0 * answer.GridFeasibleCount / answer.GridCount)}) meet every target.";
        string offers = string.Join("; ", answer.Choices.Select(BalanceWords.Offer));
        string ofWhich =
            answer.SettledCount < answer.TriedCount
                ? $" All that follows is of the {answer.SettledCount} that were solved with their grains settled."
                : "";
        return $"Tried {answer.TriedCount} designs of {offers}.{ofWhich} {met}".TrimEnd();
    }

    private void Recommend(BalanceDesign best)
    {
        Choices("Take", best);
        Figures(best);
        sheet.Row(
            "Held by",
            BalanceWords.Limits(
                answer.HeldBy,
                "no limit: a whiter design is darker, a brighter one less white"
            )
        );
        Targets(best);
        if (answer.ShareOfDraws is double share)
        {
            sheet.Row("Sure", $"every target is met in {Digits.Fixed(100 * share, 0)} % of the draws");
        }
        sheet.Row("Bands", BandWords.Of(best.Prediction.DrawCount));
    }

    private void Refuse()
    {
        sheet.Paragraph("No design meets every target.");
        string label = "Relax";
        foreach (var relaxation in answer.Relaxations.Take(MostRelaxations))
        {
            sheet.Row(
                label,
                $"{BalanceWords.Relaxed(relaxation)}; then every target is met by {BalanceWords.Choices(relaxation.Choices)}"
            );
            label = "or";
        }
        if (answer.Relaxations.IsEmpty)
        {
            sheet.Row(
                label,
                "more than one target: with any single one given up, the others still cannot all be met"
            );
        }
        if (answer.Nearest is { } nearest)
        {
            Choices("Nearest", nearest);
            Figures(nearest);
            Targets(nearest);
        }
    }

    private void Choices(string label, BalanceDesign design)
    {
        foreach (var choice in design.Choices)
        {
            sheet.Row(label, $"{choice.Key} {BalanceWords.Value(choice.Value)}");
            label = "";
        }
    }

    private void Figures(BalanceDesign design)
    {
        var figures = design.Prediction.Figures;
        string cct = figures["lit.cct_k"] is double k
            ? $": {Digits.Cct(k)} K, Duv {Digits.Duv(figures["lit.duv"])}, {Tint.InWords(figures["lit.duv"] ?? 0)}"
            : "";
        sheet.Row(
            "White",
            design.OffWhite is double off
                ? $"Δu′v′ {Digits.Fixed(off, 4)} from {AimedAt}{cct}"
                : "no light comes out"
        );
        if (design.Prediction.Decay is not null)
        {
            var band = design.Prediction.BandOf(GlowFigure);
            sheet.Row(
                "Glow",
                $"plan on {Digits.Two(band.Low)} mcd/m² {Digits.Plain(answer.GlowAtMinutes)} min after the light goes off; likely {Digits.Two(band.Likely)}"
            );
        }
    }

    private void Targets(BalanceDesign design)
    {
        string label = "Targets";
        foreach (string row in TargetRows.Of(design.Prediction))
        {
            sheet.Row(label, "- " + row);
            label = "";
        }
    }

    private void Front(int width)
    {
        if (answer.Front.Length < 2)
        {
            return;
        }
        sheet.Blank();
        sheet.Paragraph(
            "The trade: whiter above, brighter below, each meeting every target; none is beaten in both by another."
        );
        var table = new ColumnTable(keyBlocks: 1);
        table.Add([], ("", [.. answer.Front.Select(d => d == answer.Recommended ? Take : "")]));
        for (int c = 0; c < answer.Front[0].Choices.Length; c++)
        {
            string key = answer.Front[0].Choices[c].Key;
            table.Add(
                FigureDigits.Head(key.StartsWith("layers.", StringComparison.Ordinal) ? key[7..] : key),
                ("", [.. answer.Front.Select(d => BalanceWords.Value(d.Choices[c].Value))])
            );
        }
        table.Add(["Δu′v′"], ("", [.. answer.Front.Select(d => Digits.Fixed(d.OffWhite ?? 0, 4))]));
        foreach (string name in (string[])["lit.cct_k", "lit.duv"])
        {
            var figure = FigureCatalogue.Find(name)!;
            table.Add(
                [name],
                ("", [.. answer.Front.Select(d => FigureDigits.Text(figure, d.Prediction.Figures[figure]))])
            );
        }
        if (Glows)
        {
            Band[] bands = [.. answer.Front.Select(d => d.Prediction.BandOf(GlowFigure))];
            table.Add(
                ["mcd/m² at", $"{Digits.Plain(answer.GlowAtMinutes)} min"],
                ("low", [.. bands.Select(b => Digits.Two(b.Low))]),
                ("likely", [.. bands.Select(b => Digits.Two(b.Likely))])
            );
        }
        table.Print(sheet, width);
        sheet.Row(
            "Whitest",
            "held by "
                + BalanceWords.Limits(answer.WhitestHeldBy, "nothing: as white as these choices can be")
        );
        if (Glows)
        {
            sheet.Row(
                "Brightest",
                "held by "
                    + BalanceWords.Limits(
                        answer.BrightestHeldBy,
                        "nothing: as bright as these choices can be"
                    )
            );
        }
    }

    private void Map(int width)
    {
        if (answer.Map is not { } map || answer.Targets.IsEmpty)
        {
            return;
        }
        sheet.Blank();
        foreach (string line in new BalanceMapPlot(map, answer).Draw(width))
        {
            sheet.Line(line);
        }
    }
}
