using GlowMix.Casting;

namespace GlowMix.Console.Texts;

/// <summary>A batch sheet as a page to print, with room for what was really weighed.</summary>
internal sealed class BatchPage
{
    /// <summary>Over the cautions, where the mixing is behind.</summary>
    public const string CautionsHeading = "Cautions (order of mixing and times: common practice, no source)";

    private readonly BatchSheet batch;
    private readonly MixWords words;

    private BatchPage(BatchSheet batch)
    {
        this.batch = batch;
        words = new(batch.Piece, batch.Mixing, batch.ScaleStepG);
    }

    /// <summary>The page.</summary>
    public static IReadOnlyList<PageBlock> Of(BatchSheet batch) => [.. new BatchPage(batch).Blocks()];

    /// <summary>'Stair edge, warm white (stair-edge.yaml)'.</summary>
    public static string NameOf(Pieces.Piece piece) =>
        string.IsNullOrEmpty(piece.Recipe.Title) || piece.Recipe.Title == piece.Recipe.File
            ? piece.Recipe.File
            : $"{piece.Recipe.Title} ({piece.Recipe.File})";

    /// <summary>What is filled in at the bench.</summary>
    public static PageBlock.Blanks BenchBlanks { get; } =
        new([("Date", 8, ""), ("By", 8, ""), ("Room", 4, "°C"), ("Humidity", 3, "%"), ("Lots", 8, "")]);

    private IEnumerable<PageBlock> Blocks()
    {
        string count = batch.Pieces == 1 ? "1 piece" : $"{batch.Pieces} pieces";
        yield return new PageBlock.Title($"{NameOf(batch.Piece)}: batch sheet for {count}");
        yield return BenchBlanks;
        yield return new PageBlock.Rows([.. Head()]);
        for (int i = 0; i < batch.Mixes.Length; i++)
        {
            foreach (var block in MixBlocks(i))
            {
                yield return block;
            }
        }
        yield return new PageBlock.Heading(
            "Cautions (order of mixing and times: common practice, no source)"
        );
        yield return new PageBlock.Points([.. Cautions.Of(batch.Piece), Cautions.EscapeRoutes]);
    }

    private IEnumerable<(string, string)> Head()
    {
        yield return ("Resin", words.Resin);
        string assumed = batch.ScaleStepIsAssumed ? " (assumed)" : "";
        yield return (
            "Plan",
            $"{Digits.Plain(batch.Mixing.TemperatureC)} °C, {Digits.Plain(batch.Mixing.WastePercent)} % over for waste, "
                + $"scale in steps of {Digits.Plain(batch.ScaleStepG)} g{assumed}"
        );
        if (batch.HasMasses)
        {
            yield return ("In all", InAll());
            yield return (
                "Cost",
                batch.Plan.Cost is double cost
                    ? $"{Digits.Fixed(cost, 2)} by the recipe's prices"
                    : "not known, the recipe tells no prices"
            );
        }
        foreach (var warning in batch.Warnings)
        {
            yield return ("Warning", warning.Text);
        }
    }

    private string InAll()
    {
        var masses = new List<string>
        {
            $"part A {words.Grams(batch.Mixes.Sum(m => m.Weighed!.PartAG))} g",
            $"part B {words.Grams(batch.Mixes.Sum(m => m.Weighed!.PartBG))} g",
        };
        masses.AddRange(
            batch
                .Mixes.Where(m => m.Weighed!.PigmentG > 0)
                .GroupBy(m => PigmentOf(batch.Piece, m.Batch.Layer))
                .Select(g => $"{g.Key} {words.Grams(g.Sum(m => m.Weighed!.PigmentG))} g")
        );
        return $"{string.Join(", ", masses)}; {Digits.Significant(batch.Plan.MixVolumeMl ?? 0, 3)} ml";
    }

    private IEnumerable<PageBlock> MixBlocks(int index)
    {
        var mix = batch.Mixes[index];
        var layer = mix.Batch;
        string number = batch.Mixes.Length > 1 ? $"Mix {index + 1}" : "Mix";
        string amount = mix.Weighed is { } weighed
            ? $": {Digits.Significant(layer.MixVolumeMl ?? 0, 3)} ml, {words.Grams(weighed.MixG)} g"
            : "";
        yield return new PageBlock.Heading($"{number}, {MixWords.LayerOf(layer.Layer)}{amount}");
        yield return Weighing(mix);
        yield return new PageBlock.Rows([.. RowsOf(mix, isLast: index == batch.Mixes.Length - 1)]);
    }

    private PageBlock.Table Weighing(LayerMix mix)
    {
        double share = batch.Piece.Resin.MassShareOfPartA;
        var loading = mix.Batch.Layer.Loading;
        var rows = new List<IReadOnlyList<string?>>();
        Add("Part A", mix.Weighed?.PartAG ?? 100 * share, "clean cup, clean stick");
        if (mix.PigmentGoesIntoPartA)
        {
            AddPigment("dry; into A, leave no lump");
        }
        Add("Part B", mix.Weighed?.PartBG ?? 100 * (1 - share), "the pot life begins: ___ h ___");
        if (loading != default && !mix.PigmentGoesIntoPartA)
        {
            AddPigment("dry; into A + B, leave no lump");
        }
        string planned = mix.Weighed is null ? "g for 100 g" : "planned, g";
        return new([new("", false), new(planned, true), new("real, g", true), new("", false)], rows);

        void AddPigment(string note) =>
            Add(
                PigmentOf(batch.Piece, mix.Batch.Layer),
                mix.Weighed?.PigmentG ?? loading.GPer100GResin,
                note
            );

        void Add(string what, double grams, string note) =>
            rows.Add([$"{rows.Count + 1}. {what}", words.Grams(grams), null, note]);
    }

    private IEnumerable<(string, string)> RowsOf(LayerMix mix, bool isLast)
    {
        var layer = mix.Batch;
        (double, double)? vesselMl =
            mix.LeastVesselMl is double least && mix.MostVesselMl is double most ? (least, most) : null;
        string then = words.Times(layer.PotLifeMin, layer.DegasWindowMin, vesselMl);
        yield return ("Then", words.Cure(isLast) is { } cure ? $"{then}; {cure}" : then);
        if (layer.Layer.Loading != default)
        {
            yield return ("Pigment", MixWords.Loading(layer));
        }
        yield return ("Flow", words.Flow(layer));
        if (mix.Weighed is { } weighed)
        {
            yield return ("Scale", MixWords.Scale(weighed));
        }
    }

    /// <summary>The pigment of a layer by its name.</summary>
    public static string PigmentOf(Pieces.Piece piece, CastingLayer layer) =>
        piece.Layers.First(l => l.Name == layer.Name).Pigment?.Name ?? "pigment";
}
