using System.Xml.Linq;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Reports;

/// <summary>The parts of a report about one recipe.</summary>
/// <param name="report">The recipe.</param>
/// <param name="number">Which of the page's recipes, from 1.</param>
internal sealed class ReportSections(RecipeReport report, int number)
{
    private readonly Prediction prediction = report.Prediction;

    /// <summary>The picture, and what it means in two or three sentences.</summary>
    public IEnumerable<XElement> Summary() =>
        [
            new StripPicture(report, number).Illustration.Element,
            Markup.Of(
                "div",
                Markup.With("class", "lead"),
                PredictionSentences.Of(prediction).Select(s => Markup.Of("p", s)).ToArray()
            ),
        ];

    /// <summary>What was taken for granted about the room and the light before it went dark.</summary>
    public XElement Room()
    {
        var rows = new List<(string, string)>
        {
            ("Charged", prediction.ChargedBy),
            ("Dark", $"{Digits.Plain(report.Piece.DarknessTemperatureC)} °C, and no other light at all"),
            (
                "Visible",
                $"down to {Digits.Plain(prediction.LimitMcdPerM2)} mcd/m²; visible is not yet legible"
            ),
        };
        if (prediction.TakenAs.Count > 0)
        {
            rows.Add(("Taken as", string.Join(", ", prediction.TakenAs)));
        }
        return Section("What was assumed about the light", PageMarkup.Rows(rows));
    }

    /// <summary>White and light.</summary>
    public XElement Lit()
    {
        var rows = new CollectedRows();
        new LitRows(prediction, rows).Print(full: true);
        return Section(
            "Lit",
            PageMarkup.Rows(rows.All),
            Side(SpectrumChart.Of(prediction), BlueChart.Of(prediction), ColourChart.Of(prediction))
        );
    }

    /// <summary>The glow, with what must be said where escape routes are marked; null without pigment.</summary>
    public XElement? Dark()
    {
        if (prediction.Decay is null)
        {
            return null;
        }
        var columns = GlowTable.ColumnsOf(prediction);
        return Section(
            "Dark",
            PageTable.Of(
                [GlowTable.Unit, .. columns.Select(c => c.Head)],
                [
                    ["low: plan on it", .. columns.Select(c => c.Low)],
                    ["likely", .. columns.Select(c => c.Likely)],
                    ["high", .. columns.Select(c => c.High)],
                ]
            ),
            PageMarkup.Rows([
                ("Charged", prediction.ChargedBy),
                ("Band", BandOf(prediction)),
                ("Caution", Cautions.EscapeRoutes),
            ]),
            Side(DecayChart.Of(report))
        );
    }

    /// <summary>A pour that runs out of level; null where it is level.</summary>
    public XElement? Along()
    {
        Illustration[] charts = [.. AlongChart.Of(prediction)];
        return charts.Length == 0
            ? null
            : Section(
                "Along the piece",
                PageMarkup.Rows([("", AlongRows.Of(prediction).Last())]),
                Side(charts)
            );
    }

    /// <summary>Targets and how they are met; null without.</summary>
    public XElement? Targets() =>
        prediction.Targets.Count == 0
            ? null
            : Section("Targets", PageMarkup.Points(TargetRows.Of(prediction)));

    /// <summary>What to mix and pour, with the cautions of the bench.</summary>
    public XElement Bench()
    {
        var rows = new CollectedRows();
        new PourRows(prediction, rows).Print();
        return Section(
            "Pour",
            PageMarkup.Rows(rows.All),
            PageMarkup.Of(BatchPage.Of(report.Batch)).ToArray()
        );
    }

    /// <summary>The glow beside published criteria; null without pigment and without criteria.</summary>
    public XElement? Markings() =>
        report.Markings.Criteria.IsEmpty && prediction.Decay is null
            ? null
            : Section(
                "Markings",
                PageMarkup.Of(MarkingPage.InFull(report.Markings, report.KnownCriteria)).ToArray()
            );

    /// <summary>What to know before trusting the figures, and what to measure first.</summary>
    public XElement Doubt() =>
        Section(
            "Doubt",
            prediction.Warnings.Count > 0 ? PageMarkup.Points(prediction.Warnings.Select(w => w.Text)) : null,
            prediction.Assumptions.Count > 0
                ?
                [
                    Markup.Of("h3", "Assumed numbers, first to calibrate first"),
                    PageMarkup.Points(prediction.Assumptions.Select(a => $"{a.What}: {a.Text}")),
                ]
                : Array.Empty<XElement>()
        );

    /// <summary>What the piece calls for once it is in its place.</summary>
    public XElement CautionsOfUse() =>
        Section(
            "Cautions",
            Markup.Of("p", Markup.With("class", "notice"), MarkingWords.Notice),
            PageMarkup.Points([.. Cautions.OfUse(report.Piece)])
        );

    /// <summary>Every number of its materials with where it comes from, and what the figures were worked out from.</summary>
    public XElement Sources() =>
        Section(
            "Sources",
            Markup.Of(
                "details",
                Markup.Of("summary", "every number of the materials, and where it comes from"),
                report
                    .Materials.SelectMany(m =>
                        new[]
                        {
                            Markup.Of("h3", $"{m.Name}: {m.Title}"),
                            PageTable.Of(
                                (PageBlock.Column[])
                                    [new("what", false), new("value", false), new("source", false)],
                                m.Facts.Select(f => new[] { f.Key, f.Value, f.Note.Text })
                            ),
                        }
                    )
                    .ToArray()
            ),
            Markup.Of("h3", "Worked out from"),
            PageTable.Of(
                (PageBlock.Column[])[new("input", false), new("mark of its content", false)],
                report.Inputs.Select(i => new[] { i.Name, i.Hash })
            ),
            Markup.Of(
                "p",
                $"Model {ModelVersion.Number}. The same inputs give the same figures and the same marks."
            )
        );

    private static string BandOf(Prediction prediction) =>
        prediction.DrawCount > 0
            ? $"low and high are 10 % and 90 % of {prediction.DrawCount} draws of every doubtful number"
            : "low and high: pigment half to twice as strong, and its traps fitted loosely or stiffly to its sheet";

    private static XElement Section(string heading, params object?[] content) =>
        Markup.Of("section", Markup.Of("h2", heading), content);

    private static XElement Side(params Illustration?[] illustrations) =>
        Markup.Of(
            "div",
            Markup.With("class", "side"),
            illustrations.OfType<Illustration>().Select(i => i.Element).ToArray()
        );
}
