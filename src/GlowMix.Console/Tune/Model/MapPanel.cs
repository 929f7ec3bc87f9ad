using GlowMix.Console.Texts;

namespace GlowMix.Console.Tune.Model;

/// <summary>The map, and where one looks on it.</summary>
internal sealed class MapPanel(TuneModel model, IMapWork work)
{
    private string layer = "";

    /// <summary>The map; null without pigment.</summary>
    public DesignMap? Map { get; private set; }

    /// <summary>Where one looks.</summary>
    public (int Across, int Up) Cursor { get; private set; }

    /// <summary>Makes sure that the map is of the recipe as it is.</summary>
    public void Look()
    {
        if (model.Bench.Piece is not { } piece)
        {
            Map = null;
            return;
        }
        string held = model.Bench.Held?.Group ?? "";
        string wanted =
            piece.Layers.FirstOrDefault(l => l.HasPigment && l.Name == held)?.Name
            ?? (piece.Layers.Any(l => l.HasPigment && l.Name == layer) ? layer : null)
            ?? piece.Layers.FirstOrDefault(l => l.HasPigment)?.Name
            ?? "";
        if (wanted.Length == 0)
        {
            Map = null;
            return;
        }
        var document = model.Bench.Document;
        if (Map is not null && layer == wanted && Map.Serves(document, wanted))
        {
            return;
        }
        layer = wanted;
        Map = DesignMap.Of(document, wanted);
        if (Map is { } map)
        {
            Cursor = map.Nearest(document);
            work.Fill(map, document.Recipe?.Balance.GlowAtMinutes);
        }
    }

    /// <summary>Looks at another point.</summary>
    public void Move(int across, int up)
    {
        if (Map is { } map)
        {
            Cursor = (
                Math.Clamp(Cursor.Across + across, 0, map.Across.Length - 1),
                Math.Clamp(Cursor.Up + up, 0, map.Up.Length - 1)
            );
        }
    }

    /// <summary>Looks at a point of one's choice.</summary>
    public void MoveTo(int across, int up) => Move(across - Cursor.Across, up - Cursor.Up);

    /// <summary>Takes the point one looks at.</summary>
    public void Take()
    {
        if (Map is { } map)
        {
            model.Go(map.At(Cursor.Across, Cursor.Up), $"{Where(map)} from the map");
        }
    }

    /// <summary>What is known of the point one looks at.</summary>
    public string Told
    {
        get
        {
            if (Map is not { } map)
            {
                return "No layer has pigment: nothing to map.";
            }
            var cell = map[Cursor.Across, Cursor.Up];
            return cell is null ? $"{Where(map)}: …"
                : cell.MissedCount is null ? $"{Where(map)}: {cell.Missed}"
                : $"{Where(map)}: {(cell.CctK is null ? "no CCT" : $"{Digits.Cct(cell.CctK)} K")}, {Digits.Percent(cell.FluxKeptPercent)} of the light, glow {Digits.Two(cell.GlowMcdPerM2)} mcd/m²; {cell.Missed}.";
        }
    }

    private string Where(DesignMap map) =>
        $"Loading {Digits.Plain(map.Across[Cursor.Across])} {(map.AcrossKey.EndsWith("percent", StringComparison.Ordinal) ? "%" : "g/100 g")}, depth {Digits.Plain(map.Up[Cursor.Up])} mm";
}
