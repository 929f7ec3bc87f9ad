using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.Documents.Shapes;

namespace GlowMix.Predictions.Kept;

/// <summary>What a figures file holds.</summary>
public static class KeptFiguresShape
{
    private static readonly NumberShape Any = new(NumberRange.Any);

    private static readonly TextShape Text = new();

    private static readonly string[] Places = ["shallow", "nominal", "deep"];

    private static readonly (string Name, string Unit)[] OfPlace =
    [
        ("depth_mm", "mm"),
        ("cct_k", "K"),
        ("duv", ""),
        ("flux_lm", "lm"),
        ("luminance_10_min_mcd_m2", "mcd/m²"),
    ];

    /// <summary>The whole file.</summary>
    public static MappingShape Whole { get; } =
        new([
            new(
                KeptFiguresText.FormatKey,
                new NumberShape(NumberRange.Between(KeptFigures.Format, KeptFigures.Format), IsWhole: true),
                "Number of the format; the first key.",
                IsNeeded: true
            ),
            new("recipe", Text, "The recipe's file, beside this one.", IsNeeded: true),
            new(
                "model_version",
                new NumberShape(NumberRange.Between(1, int.MaxValue), IsWhole: true),
                "The model that made the figures; one more whenever a change of the program moves one.",
                IsNeeded: true
            ),
            new("bands_of", Text, "'512 draws', or 'bounding runs'.", IsNeeded: true),
            new(
                "inputs",
                new MappingShape([]) { OtherKeys = Text },
                "What the figures were worked out from; the word changes when what is said changes.",
                IsNeeded: true
            ),
            new(
                "figures",
                Named(Figures(), []),
                "The likely figures, rounded to fixed steps.",
                IsNeeded: true
            ),
            new("bands", Named(Banded(), [".low", ".high"]), "Low and high of the figures that have a band."),
            new(
                "targets",
                new ListShape(
                    new MappingShape([]) { OtherKeys = new TextShape { Only = [.. TargetStateWords.All] } }
                ),
                "What became of the recipe's targets, in order."
            ),
            new("warnings", new ListShape(Text), "Codes of the warnings, heaviest first."),
            new(KeptFiguresText.ChecksumKey, Text, "Of all other lines.", IsNeeded: true),
        ]);

    private static IEnumerable<(string Name, string Unit)> Banded() =>
        FigureCatalogue.All.Select(f => (f.Name, f.Unit));

    private static IEnumerable<(string Name, string Unit)> Figures() =>
        Banded().Concat(Places.SelectMany(p => OfPlace.Select(f => ($"along.{p}.{f.Name}", f.Unit))));

    private static MappingShape Named(
        IEnumerable<(string Name, string Unit)> figures,
        ImmutableArray<string> ends
    ) =>
        new([
            .. from figure in figures
            from end in ends.IsEmpty ? [""] : ends
            select new KeyShape(
                figure.Name + end,
                Any,
                figure.Unit.Length == 0 ? "A number." : $"In {figure.Unit}."
            ),
        ]);
}
