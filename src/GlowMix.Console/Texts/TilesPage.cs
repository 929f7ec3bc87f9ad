using GlowMix.Casting;
using GlowMix.Readings.Sets;
using GlowMix.Recipes;

namespace GlowMix.Console.Texts;

/// <summary>The sheet of three test tiles: what to weigh, how to charge and when to read, and what the readings are called.</summary>
internal sealed class TilesPage
{
    private const double SpareToTell = 1.2;

    private readonly TestTiles tiles;
    private readonly MixWords words;

    private TilesPage(TestTiles tiles)
    {
        this.tiles = tiles;
        words = new(tiles.Piece, tiles.Mixing, tiles.ScaleStepG);
    }

    /// <summary>The page.</summary>
    public static IReadOnlyList<PageBlock> Of(TestTiles tiles) => [.. new TilesPage(tiles).Blocks()];

    /// <summary>The files that readings of the tiles are kept in: the readings set first, then what it names.</summary>
    public static IEnumerable<string> FilesOf(TestTiles tiles)
    {
        string name = NameOf(tiles);
        yield return TileFiles.SetOf(name);
        foreach (var reading in TileFiles.Of(name))
        {
            yield return reading.File;
        }
    }

    private static string NameOf(TestTiles tiles) =>
        Path.GetFileNameWithoutExtension(tiles.Piece.Recipe.File);

    private IEnumerable<PageBlock> Blocks()
    {
        yield return new PageBlock.Title($"{BatchPage.NameOf(tiles.Piece)}: three test tiles");
        yield return BatchPage.BenchBlanks;
        yield return new PageBlock.Rows([.. Head()]);
        for (int i = 0; i < tiles.Mixes.Length; i++)
        {
            string number = tiles.Mixes.Length > 1 ? $"Mix {i + 1}" : "Mix";
            var mix = tiles.Mixes[i];
            string spare =
                mix.Parts.MixG > SpareToTell * mix.NeededG
                    ? $" (they take {Digits.Two(mix.NeededG)}; the scale needs more)"
                    : "";
            yield return new PageBlock.Heading(
                $"{number}, {MixWords.LayerOf(mix.Layer)}: {words.Grams(mix.Parts.MixG)} g of A + B{spare}"
            );
            yield return Weighing(mix);
            yield return new PageBlock.Rows([.. RowsOf(mix, isLast: i == tiles.Mixes.Length - 1)]);
        }
        yield return new PageBlock.Heading("Charge and read");
        yield return new PageBlock.Rows([.. Reading()]);
        yield return new PageBlock.Heading(BatchPage.CautionsHeading);
        yield return new PageBlock.Points([.. Cautions.Of(tiles.Piece), Cautions.EscapeRoutes]);
    }

    private IEnumerable<(string, string)> Head()
    {
        string leds = tiles.PackageCount switch
        {
            0 => "the planned board (no LED counted)",
            1 => "the planned board with 1 LED",
            int count => $"the planned board with {count} LEDs",
        };
        yield return (
            "Tiles",
            $"{Digits.Plain(tiles.LengthMm)} × {Digits.Plain(tiles.WidthMm)} mm each, over {leds}; tile 1 half the loading, "
                + "tile 2 as planned, tile 3 one and a half times"
        );
        yield return ("Resin", words.Resin);
        yield return (
            "Plan",
            $"{Digits.Plain(tiles.Mixing.TemperatureC)} °C, {Digits.Plain(tiles.Mixing.WastePercent)} % over for waste, "
                + $"scale in steps of {Digits.Plain(tiles.ScaleStepG)} g"
        );
        foreach (var warning in tiles.Warnings)
        {
            yield return ("Warning", warning.Text);
        }
    }

    private PageBlock.Table Weighing(TileMix mix)
    {
        bool hasPigment = mix.Layer.Loading != default;
        string pigment = BatchPage.PigmentOf(tiles.Piece, mix.Layer);
        var rows = new List<IReadOnlyList<string?>>();
        Add("Part A", mix.Parts.PartAG, "clean cup, clean stick");
        Add("Part B", mix.Parts.PartBG, "the pot life begins: ___ h ___");
        for (int i = 0; i < mix.Cups.Length && hasPigment; i++)
        {
            var cup = mix.Cups[i];
            Add($"Tile {i + 1}, A + B", cup.ResinG, "into a cup of its own");
            Add(
                $"  {pigment}",
                cup.PigmentG,
                $"dry; {Digits.Significant(cup.LoadingPercent, 3)} % of its mix"
            );
        }
        return new([new("", false), new("planned, g", true), new("real, g", true), new("", false)], rows);

        void Add(string what, double grams, string note) => rows.Add([what, words.Grams(grams), null, note]);
    }

    private IEnumerable<(string, string)> RowsOf(TileMix mix, bool isLast)
    {
        string cups =
            mix.Layer.Loading != default
                ? "; stir each cup again with its pigment"
                : $"; pour {Digits.Plain(mix.Layer.DepthMm)} mm over each";
        (double, double)? vesselMl =
            tiles.Mixing.VacuumMin > 0
                ? (LayerMix.LeastVesselPerMix * mix.MixVolumeMl, LayerMix.MostVesselPerMix * mix.MixVolumeMl)
                : null;
        string then = words.Times(mix.PotLifeMin, mix.DegasWindowMin, vesselMl);
        string cure = words.Cure(isLast) is { } text ? $"; {text}" : "";
        yield return ("Then", $"{then}{cups}{cure}");
        if (mix.Layer.Loading != default)
        {
            string flows = string.Join(
                ", ",
                mix.Cups.Select(c => c.Batch.ViscosityMPaS is double v ? Digits.Two(v) : "a paste")
            );
            yield return ("Flow", $"{flows} mPa·s");
        }
        yield return ("Scale", MixWords.Scale(mix.Parts));
    }

    private IEnumerable<(string, string)> Reading()
    {
        string charge = string.Join(", then ", tiles.Piece.Steps.Select(s => s.Words));
        string daily = tiles.Piece.Start == ChargeStart.SettledDaily ? ", three days alike" : "";
        yield return (
            "Charge",
            $"cured tiles {Digits.Plain(TestTiles.DarkBeforeH)} h in the dark, then all three side by side: {charge}{daily}; "
                + "note the light at their face and their temperature"
        );
        string minutes = string.Join(", ", TestTiles.ReadAtMinutes.Select(Digits.Plain));
        yield return (
            "Read",
            $"{minutes} min after the last light goes off, at {Digits.Plain(tiles.Piece.DarknessTemperatureC)} °C, as long as "
                + "the meter shows five of its steps or more; then the spectrometer, lit by their LEDs, at one distance for all"
        );
        string name = NameOf(tiles);
        yield return (
            "Files",
            $"for 'glowmix fit': {name}.readings.yaml names {name}.bare.txt (the bare board lit, before the pour) and for "
                + $"tiles 1 to 3 {name}.tile-1.lit.txt and {name}.tile-1.decay.txt, and so on"
        );
    }
}
