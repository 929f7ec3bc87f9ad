using GlowMix.Choosing.Compare;
using GlowMix.Predictions;

namespace GlowMix.Console.Texts;

/// <summary>
/// Two recipes side by side as a page: first whether the yardstick moved, then targets, then what differs, then figures, then
/// causes.
/// </summary>
internal sealed class ComparisonPage
{
    private const string At60 = "afterglow.luminance_mcd_m2[60]";
    private const double StandardLimit = 0.3;

    // What a maker decides by, in the order of the light and then of the bench.
    private static readonly string[] shown =
    [
        "lit.cct_k",
        "lit.duv",
        "lit.ra",
        "lit.flux_kept_percent",
        "lit.flux_lm",
        "along_largest_step_u_prime_v_prime",
        "afterglow.luminance_mcd_m2[2]",
        "afterglow.luminance_mcd_m2[10]",
        At60,
        "afterglow.minutes_to_0_3_mcd_m2",
        "afterglow.minutes_to_limit",
        "casting.mix_volume_ml",
        "casting.part_a_g",
        "casting.part_b_g",
        "casting.pigment_g",
        "casting.pigment_g_per_100g_resin",
        "casting.viscosity_mpa_s",
        "casting.settled_mm",
        "casting.degas_window_min",
        "casting.cost",
    ];

    private static readonly string[] inShort =
    [
        "lit.cct_k",
        "lit.duv",
        "lit.flux_kept_percent",
        At60,
        "afterglow.minutes_to_0_3_mcd_m2",
    ];

    private readonly Comparison comparison;

    private ComparisonPage(Comparison comparison) => this.comparison = comparison;

    /// <summary>The page.</summary>
    /// <param name="comparison">What is compared.</param>
    /// <param name="note">What to know beforehand, such as what a revision is taken with; null for nothing.</param>
    public static IReadOnlyList<PageBlock> Of(Comparison comparison, string? note) =>
        [.. new ComparisonPage(comparison).Blocks(note)];

    private IEnumerable<PageBlock> Blocks(string? note)
    {
        yield return new PageBlock.Title($"{comparison.Before.Recipe} → {comparison.After.Recipe}");
        if (note is not null)
        {
            yield return new PageBlock.Paragraph(note);
        }
        string[] yardstick = [.. comparison.Differences.Where(d => d.IsYardstick).Select(DifferenceWords.Of)];
        if (yardstick.Length > 0)
        {
            yield return new PageBlock.Heading("The yardstick moved");
            yield return new PageBlock.Points(yardstick);
        }
        foreach (var block in ComparisonTargets.Of(comparison))
        {
            yield return block;
        }
        string[] differences =
        [
            .. comparison.Differences.Where(d => !d.IsYardstick).Select(DifferenceWords.Of).Distinct(),
        ];
        yield return new PageBlock.Heading("Differences");
        yield return differences.Length > 0
            ? new PageBlock.Points(differences)
            : new PageBlock.Paragraph(
                yardstick.Length > 0 ? "None but the yardstick." : "None: the two say the same."
            );
        foreach (var block in Figures().Concat(Causes()))
        {
            yield return block;
        }
        yield return new PageBlock.Space();
        yield return new PageBlock.Paragraph(Cautions.EscapeRoutes);
    }

    private bool TargetsMoved =>
        comparison.Differences.Any(d => d.KeyPath.StartsWith("targets.", StringComparison.Ordinal));

    private IEnumerable<PageBlock> Figures()
    {
        var moved = new List<(FigureChange Change, string Words)>();
        var unmoved = new List<string>();
        foreach (string name in shown)
        {
            if (ChangeOf(name) is not { } change)
            {
                continue;
            }
            if (change.IsMoved && ChangeWords.Of(change) is { } words)
            {
                moved.Add((change, words));
            }
            else
            {
                unmoved.Add(ChangeWords.NameOf(change.Figure));
            }
        }
        yield return new PageBlock.Heading("Figures");
        if (moved.Count == 0)
        {
            yield return new PageBlock.Paragraph("No figure moves.");
            yield break;
        }
        if (InShort() is { } inShort)
        {
            yield return new PageBlock.Paragraph(inShort);
        }
        yield return new PageBlock.Table(
            [new("", false), new("before", true), new("after", true), new("change", false)],
            moved.ConvertAll(m =>
                (IReadOnlyList<string?>)
                    [
                        ChangeWords.NameOf(m.Change.Figure),
                        ChangeWords.Value(m.Change.Figure, m.Change.Before.Likely),
                        ChangeWords.Value(m.Change.Figure, m.Change.After.Likely),
                        m.Words,
                    ]
            )
        );
        if (unmoved.Count > 0)
        {
            yield return new PageBlock.Paragraph($"Unmoved: {string.Join(", ", unmoved)}.");
        }
        foreach (string sentence in BandSentences())
        {
            yield return new PageBlock.Paragraph(sentence);
        }
    }

    // 'White 150 K cooler (bluer), pinker; light 13 % dimmer; glow at 60 min 61 % dimmer.'
    private string? InShort()
    {
        var parts = new List<string>();
        foreach (string name in inShort)
        {
            if (
                ChangeOf(name) is { } change
                && ChangeWords.Way(change) is { Length: > 0 } way
                && ChangeWords.Of(change) is { } words
            )
            {
                string size = words.Split(" (")[0].TrimStart('+', '-');
                parts.Add(
                    change.Figure.Name == "lit.duv"
                        ? way
                        : $"{ChangeWords.NameOf(change.Figure)} {size} {way}"
                );
            }
        }
        if (parts.Count == 0)
        {
            return null;
        }
        string text = string.Join("; ", parts);
        return $"{char.ToUpperInvariant(text[0])}{text[1..]}.";
    }

    // What is in doubt of both pieces alike falls out of their difference: this is what a comparison is for.
    private IEnumerable<string> BandSentences()
    {
        var glow = ChangeOf(At60);
        if (glow is { IsMoved: true } && ChangeWords.Of(glow) is { } words)
        {
            string known = ChangeWords.KnownTo(glow) is { } factor
                ? $", though each is known to {factor} only"
                : "";
            yield return $"Glow at 60 min: {ChangeWords.Banded(glow.Figure, glow.Before)} before, {ChangeWords.Banded(glow.Figure, glow.After)} after: {words}{known}.";
        }
        yield return comparison.DrawCount > 0
            ? $"In brackets what becomes of the middle 80 % of {comparison.DrawCount} draws, both pieces drawn alike: doubt that they share falls out."
            : "In brackets the least and the greatest of the runs that bound the doubt, both pieces turned alike; quick, and cruder than draws.";
    }

    private IEnumerable<PageBlock> Causes()
    {
        if (comparison.Causes.IsEmpty)
        {
            yield break;
        }
        int[] columns =
        [
            .. Enumerable
                .Range(0, Comparison.CauseFigures.Length)
                .Where(i => comparison.Causes.Any(c => c.Changes[i] is not null))
                .Where(i => ChangeOf(Comparison.CauseFigures[i].Name)?.Change.Likely is not null),
        ];
        var rows = comparison
            .Causes.Select(c =>
                (IReadOnlyList<string?>)
                    [
                        DifferenceWords.OfExchange(c.Key),
                        .. Array.ConvertAll(
                            columns,
                            i => ChangeWords.Alone(Comparison.CauseFigures[i], c.Changes[i])
                        ),
                    ]
            )
            .Where(row => row.Skip(1).Any(cell => cell != ChangeWords.NoChange))
            .ToList();
        if (rows.Count > 0)
        {
            yield return new PageBlock.Heading("Causes: each change alone");
            yield return new PageBlock.Table(
                [
                    new("", false),
                    .. Array.ConvertAll(
                        columns,
                        i => new PageBlock.Column(HeadOf(Comparison.CauseFigures[i]), true)
                    ),
                ],
                rows
            );
        }
    }

    private static string HeadOf(Figure figure) =>
        figure.Name switch
        {
            "lit.cct_k" => "white, K",
            "lit.flux_kept_percent" => "light, points",
            _ when figure.AtMinutes is { } minutes => $"{FigureCatalogue.MinutesKey(minutes)} min, %",
            _ => ChangeWords.NameOf(figure),
        };

    private FigureChange? ChangeOf(string name)
    {
        foreach (var change in comparison.Figures)
        {
            if (change.Figure.Name == name)
            {
                // The limit of the standards is told already.
                return
                    name == "afterglow.minutes_to_limit"
                    && comparison.Before.LimitMcdPerM2 == StandardLimit
                    && comparison.After.LimitMcdPerM2 == StandardLimit
                    ? null
                    : change;
            }
        }
        return null;
    }
}
