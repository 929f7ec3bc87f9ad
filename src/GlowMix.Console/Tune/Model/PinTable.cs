using GlowMix.Console.Texts;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>The start, the pins and the present state side by side: what differs of the recipe, then the figures.</summary>
internal static class PinTable
{
    private static readonly (string Label, string Figure)[] figures =
    [
        ("white, K", "lit.cct_k"),
        ("Duv", "lit.duv"),
        ("light kept, %", "lit.flux_kept_percent"),
        ("blue to pigment, %", "lit.blue_absorbed_by_pigment_percent"),
        ("10 min, mcd/m²", "afterglow.luminance_mcd_m2[10]"),
        ("60 min, mcd/m²", "afterglow.luminance_mcd_m2[60]"),
        ("above limit, min", "afterglow.minutes_to_limit"),
    ];

    /// <summary>Rows of cells, the first the heads.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Of(TuneModel model)
    {
        List<(string Name, RecipeDocument Document)> states =
        [
            ("start", model.Bench.Start),
            .. model.Pins.All.Select(p => ($"pin {p.Name}", p.Document)),
            ("now", model.Bench.Document),
        ];
        var rows = new List<IReadOnlyList<string>> { (string[])["", .. states.Select(s => s.Name)] };
        foreach (var knob in model.Bench.Knobs)
        {
            string[] values =
            [
                .. states.Select(s =>
                    s.Document.TryResolve(knob.KeyPath, out _, out _)
                        ? s.Document.Get(knob.KeyPath) ?? "taken"
                        : "-"
                ),
            ];
            if (values.Distinct().Count() > 1)
            {
                string unit = knob.Unit.Length > 0 ? $", {knob.Unit}" : "";
                rows.Add([$"{knob.FullLabel}{unit}", .. values]);
            }
        }
        foreach (var (label, name) in figures)
        {
            var figure = FigureCatalogue.Find(name)!;
            rows.Add([
                label,
                .. states.Select(s =>
                    model.Of(s.Document) is { } p ? FigureDigits.Text(figure, p.Figures[figure]) : "…"
                ),
            ]);
        }
        return rows;
    }
}
