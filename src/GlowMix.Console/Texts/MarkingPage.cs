using GlowMix.Markings;

namespace GlowMix.Console.Texts;

/// <summary>Marking guidance as a page.</summary>
internal sealed class MarkingPage
{
    private const double StandardLimitMcdPerM2 = 0.3;

    private readonly MarkingGuidance guidance;

    private MarkingPage(MarkingGuidance guidance) => this.guidance = guidance;

    /// <summary>Each criterion in full.</summary>
    /// <param name="guidance">What was compared.</param>
    /// <param name="known">Names of all criteria on the shelf, told where none was asked for.</param>
    public static IReadOnlyList<PageBlock> InFull(MarkingGuidance guidance, IReadOnlyList<string> known)
    {
        var page = new MarkingPage(guidance);
        return
        [
            .. page.Head(),
            .. guidance.Criteria.SelectMany(page.Criterion),
            .. guidance.Criteria.IsEmpty ? NoCriteria(known) : [],
            .. page.OwnRoom(),
            .. page.End(),
        ];
    }

    /// <summary>A row or two a criterion.</summary>
    public static IReadOnlyList<PageBlock> AsTable(MarkingGuidance guidance)
    {
        var page = new MarkingPage(guidance);
        return [.. page.Head(), .. page.Table(), .. page.OwnRoom(), .. page.End()];
    }

    private IEnumerable<PageBlock> Head() =>
        [
            new PageBlock.Paragraph(MarkingWords.Notice),
            new PageBlock.Heading(
                $"{BatchPage.NameOf(guidance.Piece)}: the predicted glow beside published criteria"
            ),
        ];

    private static IEnumerable<PageBlock> NoCriteria(IReadOnlyList<string> known) =>
        [
            new PageBlock.Paragraph(
                "The recipe names no criteria: add 'criteria:' to it, or name some with --criterion, or see all with "
                    + $"--all. There are {string.Join(", ", known)}."
            ),
        ];

    private IEnumerable<PageBlock> Criterion(CriterionComparison compared)
    {
        var criterion = compared.Criterion;
        yield return new PageBlock.Heading(
            $"{criterion.Name}, {criterion.Title}: {MarkingWords.Of(compared.State)}"
        );
        var rows = new List<(string, string)>
        {
            ("Document", criterion.Document.Value),
            ("Clause", MarkingWords.Clause(criterion)),
            ("Charge", ChargeOf(compared)),
        };
        if (compared.NotJudgedBecause is { } reason)
        {
            rows.Add(("", $"not judged: {reason}"));
        }
        yield return new PageBlock.Rows(rows);
        if (!compared.Limits.IsEmpty)
        {
            yield return new PageBlock.Table(
                [
                    new("after", true),
                    new("asked", true),
                    new("low", true),
                    new("likely", true),
                    new("high", true),
                    new("in mcd/m²", false),
                ],
                [.. compared.Limits.Select(LimitRow)]
            );
        }
        yield return new PageBlock.Rows([.. Behind(compared)]);
    }

    private static IReadOnlyList<string?> LimitRow(LimitComparison limit) =>
        [
            $"{Digits.Plain(limit.Minutes)} min",
            limit.LeastMcdPerM2 is double least ? Digits.Plain(least) : "-",
            Luminance(limit.Luminance?.Low),
            Luminance(limit.Luminance?.Likely),
            Luminance(limit.Luminance?.High),
            limit.LeastMcdPerM2 is null ? "" : MarkingWords.Of(limit.State),
        ];

    private static string Luminance(double? mcdPerM2) => mcdPerM2 is null ? "-" : Digits.Two(mcdPerM2);

    private static IEnumerable<(string, string)> Behind(CriterionComparison compared)
    {
        if (compared.Criterion.Limits.Value.Limits.IsEmpty && compared.MinutesTo03McdPerM2 is { } minutes)
        {
            yield return ("", MarkingWords.MinutesAbove(minutes, StandardLimitMcdPerM2));
        }
        if (MarkingWords.ReadFirst(compared) is { } first)
        {
            yield return ("First", first);
        }
        if (!compared.Criterion.AsksAlso.IsEmpty)
        {
            yield return ("Asks also", $"{string.Join("; ", compared.Criterion.AsksAlso)} (not judged)");
        }
        string label = "Source";
        foreach (string source in MarkingWords.Sources(compared.Criterion))
        {
            yield return (label, source);
            label = "";
        }
    }

    private static string ChargeOf(CriterionComparison compared)
    {
        string charge = MarkingWords.Charge(compared.Criterion.Charge);
        return compared.MinutesTo03McdPerM2 is null
            ? charge
            : $"{charge}, on empty traps, light and dark at {Digits.Plain(MarkingGuide.TestTemperatureC)} °C";
    }

    private IEnumerable<PageBlock> Table()
    {
        yield return new PageBlock.Paragraph(
            "Each is charged as its document says; the time shown is the one that the low end comes least far to, in mcd/m²."
        );
        yield return new PageBlock.Table(
            [
                new("", false),
                new("", false),
                new("after", true),
                new("asked", true),
                new("low", true),
                new("likely", true),
                new("high", true),
                new("", false),
            ],
            [.. guidance.Criteria.Select(TableRow)]
        );
    }

    private static IReadOnlyList<string?> TableRow(CriterionComparison compared)
    {
        var criterion = compared.Criterion;
        string[] notes =
        [
            criterion.Document.Value,
            MarkingWords.Clause(criterion),
            MarkingWords.Charge(criterion.Charge),
            .. new[] { compared.NotJudgedBecause, MarkingWords.ReadFirst(compared) }.OfType<string>(),
        ];
        var numbers = compared.Tightest is { } tightest
            ? LimitRow(tightest).Take(5)
            : Enumerable.Repeat<string?>("", 5);
        return [criterion.Name, MarkingWords.Of(compared.State), .. numbers, string.Join("; ", notes)];
    }

    private IEnumerable<PageBlock> OwnRoom()
    {
        yield return new PageBlock.Heading("The recipe's own room");
        yield return new PageBlock.Rows([.. RoomRows()]);
    }

    private IEnumerable<(string, string)> RoomRows()
    {
        if (guidance.Room is not { } room)
        {
            yield return ("Dark", "no pigment: it does not glow");
            yield break;
        }
        yield return ("Charged", room.ChargedBy);
        yield return (
            "Above",
            MarkingWords.MinutesAbove(room.MinutesToLimit, room.LimitMcdPerM2)
                + $", in the dark at {Digits.Plain(room.DarknessTemperatureC)} °C"
        );
        if (guidance.Bridge is { } bridge)
        {
            yield return ("Daylight", Bridge(bridge));
        }
        yield return ("Band", MarkingWords.BandOf(guidance));
    }

    private static string Bridge(ChargeBridge bridge)
    {
        string lux = Digits.Plain(ChargeBridge.DaylightLx);
        if (bridge.TenMinuteMcdPerM2 <= 0)
        {
            return "no light reaches the pigment";
        }
        string longer =
            bridge.LongerAddsLittle ? "longer adds under 10 %"
            : bridge.MinutesTo90Percent is double minutes
                ? $"{Duration.Of(minutes)} of its last light would bring nine tenths of what it can"
            : "";
        if (bridge.DaylightMinutes is not double daylight)
        {
            string most = Duration.Of(bridge.DaylightMinutesTo90Percent);
            return $"this charge brings as much as {lux} lx of daylight ever does (nine tenths of that in {most}); {longer}";
        }
        string hours =
            bridge.LuxHours is double own && bridge.DaylightLuxHours is double day
                ? $"; {Digits.Two(own)} lx·h against {Digits.Two(day)} lx·h: lux-hours do not add up"
                : "";
        return $"this charge = the 10 min glow of {Minutes(daylight)} at {lux} lx of daylight; {longer}{hours} (likely values)";
    }

    // Under a minute counts here: bright daylight is quick.
    private static string Minutes(double minutes) =>
        minutes < 1 ? $"{Digits.Two(minutes)} min" : Duration.Of(minutes);

    private IEnumerable<PageBlock> End()
    {
        yield return new PageBlock.Heading("Cautions");
        yield return new PageBlock.Points([.. Cautions.Of(guidance.Piece)]);
        yield return new PageBlock.Space();
        yield return new PageBlock.Paragraph(MarkingWords.Notice);
    }
}
