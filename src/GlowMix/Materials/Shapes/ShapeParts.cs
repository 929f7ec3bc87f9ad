using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;

namespace GlowMix.Materials.Shapes;

/// <summary>What materials of all kinds have alike: numbers, words, tables and rows, each with its source and, where it has one, its doubt.</summary>
internal static class ShapeParts
{
    public static readonly KeyShape Source = new(
        "source",
        new TextShape(),
        "Where the number comes from: a publication, or 'assumed', 'from memory', 'common practice, no source', 'computed; how', "
            + "'secondary source; what was read', 'own reading', 'label', each with '; note' behind it.",
        IsNeeded: true
    );

    public static readonly KeyShape Factor = new(
        "factor",
        new NumberShape(NumberRange.Above(1, 1000)),
        "Doubt as a factor up and down: two standard deviations of its logarithm."
    );

    public static readonly KeyShape Tolerance = new(
        "tolerance_percent",
        new NumberShape(NumberRange.Above(0, 100)),
        "Doubt in percent of the value: two standard deviations."
    );

    public static readonly ImmutableArray<KeyShape> Ends =
    [
        new("low", new NumberShape(NumberRange.Any), "Low end of the doubt; with high."),
        new("high", new NumberShape(NumberRange.Any), "High end of the doubt; with low."),
    ];

    public static readonly ImmutableArray<(string, string)> OneDoubt =
    [
        ("factor", "tolerance_percent"),
        ("low", "factor"),
        ("low", "tolerance_percent"),
        ("high", "factor"),
        ("high", "tolerance_percent"),
    ];

    public static ImmutableArray<KeyShape> Index()
    {
        var allowed = NumberRange.Between(1, 3);
        var any = new NumberShape(NumberRange.Any);
        return
        [
            Entry(
                "refractive_index",
                "Refractive index: one value, a table, or a formula over the wavelength in µm.",
                [
                    new("value", new NumberShape(allowed), "The same at all wavelengths."),
                    new("at_nm", new TableShape(new(allowed)), "At wavelengths in nm."),
                    new(
                        "formula",
                        new TextShape { Only = ["sellmeier", "sellmeier-with-offset", "cauchy"] },
                        "Which formula."
                    ),
                    new("a", any, "Offset, or first coefficient."),
                    new("b_um2", any, "Second coefficient of Cauchy's formula, µm²."),
                    new("c_um4", any, "Third coefficient of Cauchy's formula, µm⁴."),
                    new(
                        "terms",
                        new ListShape(
                            new MappingShape([
                                new("b", any, "B.", IsNeeded: true),
                                new("c_um2", any, "C, µm².", IsNeeded: true),
                            ]),
                            1,
                            5
                        ),
                        "Terms of Sellmeier's formula."
                    ),
                    .. Ends,
                    Factor,
                    Tolerance,
                    Source,
                ],
                isNeeded: false,
                oneNeededOf: ["value", "at_nm", "formula"]
            ),
            Number(
                "refractive_index_d",
                allowed,
                "Refractive index at 587.6 nm; with abbe_number.",
                isNeeded: false
            ),
            Number(
                "abbe_number",
                NumberRange.Between(10, 200),
                "How much the index falls from blue to red.",
                isNeeded: false
            ),
        ];
    }

    public static KeyShape Number(string name, NumberRange range, string description, bool isNeeded = true) =>
        Entry(
            name,
            description,
            [
                new("value", new NumberShape(range), "The number.", IsNeeded: true),
                .. Ends,
                Factor,
                Tolerance,
                Source,
            ],
            isNeeded
        );

    public static KeyShape NumberOrUnknown(string name, NumberRange range, string description) =>
        Entry(
            name,
            description,
            [
                new(
                    "value",
                    new EitherShape([new NumberShape(range), new TextShape { Only = ["unknown"] }]),
                    "The number, or unknown.",
                    IsNeeded: true
                ),
                .. Ends,
                Factor,
                Tolerance,
                Source,
            ]
        );

    public static KeyShape Word(string name, string description, ImmutableArray<string> known) =>
        Entry(
            name,
            description,
            [new("value", new TextShape { Known = known }, "The word.", IsNeeded: true), Source]
        );

    public static KeyShape Table(
        string name,
        string axis,
        NumberRange range,
        string description,
        bool isNeeded = true
    ) =>
        Entry(
            name,
            description,
            [new(axis, new TableShape(new(range)), "Ascending.", IsNeeded: true), Factor, Tolerance, Source],
            isNeeded
        );

    public static KeyShape Rows(string name, string description, params ImmutableArray<KeyShape> keys) =>
        new(
            name,
            new ListShape(
                new MappingShape([.. keys, Factor, Tolerance, Source]) { Exclusive = OneDoubt },
                1,
                20
            ),
            description,
            IsNeeded: true
        );

    public static KeyShape Entry(
        string name,
        string description,
        ImmutableArray<KeyShape> keys,
        bool isNeeded = true,
        ImmutableArray<string>? oneNeededOf = null
    ) =>
        new(
            name,
            new MappingShape(keys)
            {
                Exclusive =
                [
                    .. OneDoubt.Where(pair =>
                        keys.Any(k => k.Name == pair.Item1) && keys.Any(k => k.Name == pair.Item2)
                    ),
                ],
                OneNeededOf = oneNeededOf is { } one ? [one] : [],
            },
            description,
            isNeeded
        );
}
