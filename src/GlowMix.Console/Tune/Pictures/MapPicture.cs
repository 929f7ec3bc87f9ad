using GlowMix.Console.Texts;
using GlowMix.Console.Tune.Model;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The map: as bright as each point glows, marked by how many targets it misses, with where one is and where one looks.</summary>
internal static class MapPicture
{
    private const int GutterColumns = 6;

    /// <summary>Paints it.</summary>
    public static MapPlaces Paint(Leaf leaf, Area area, TuneModel model, Palette palette)
    {
        int y = area.Y;
        foreach (string line in Wrapped.Lines(model.Map.Told, area.Columns).Take(3))
        {
            leaf.Put(area.X, y++, line, Look.Plain);
        }
        if (model.Map.Map is not { } map)
        {
            return default;
        }
        y = area.Y + 3;
        int rows = area.Y + area.Rows - y - 3;
        var places = new MapPlaces(
            area.X + GutterColumns,
            y + 1,
            Math.Clamp((area.Columns - GutterColumns) / map.Across.Length, 1, 7),
            Math.Clamp((rows - 1) / map.Up.Length, 1, 3),
            map.Across.Length,
            map.Up.Length
        );
        string progress = map.KnownCount < map.Count ? $"   {map.KnownCount} of {map.Count} points" : "";
        leaf.Put(area.X, y, $"depth, mm{progress}", Look.Plain.Faint);
        Points(leaf, places, map, model, palette);
        Axes(leaf, area, places, map);
        Legend(leaf, area);
        return places;
    }

    private static void Points(Leaf leaf, MapPlaces places, DesignMap map, TuneModel model, Palette palette)
    {
        var here = map.Nearest(model.Bench.Document);
        double most = Glows(map).DefaultIfEmpty(0).Max();
        for (int up = 0; up < places.UpCount; up++)
        {
            for (int across = 0; across < places.AcrossCount; across++)
            {
                var cell = map[across, up];
                int top = places.TopY + ((places.UpCount - 1 - up) * places.CellRows);
                int left = places.X + (across * places.CellColumns);
                var look = palette.MapPoint(most > 0 ? cell?.GlowMcdPerM2 / most : null);
                look = (across, up) == model.Map.Cursor ? Look.Plain.Reverse : look;
                leaf.Fill(new(left, top, places.CellColumns, places.CellRows), look);
                int middle = left + (places.CellColumns / 2);
                leaf.Set(
                    middle,
                    top + (places.CellRows / 2),
                    (across, up) == here ? '@' : Mark(cell, leaf.Ascii),
                    look.Bold
                );
            }
        }
    }

    private static IEnumerable<double> Glows(DesignMap map) =>
        from up in Enumerable.Range(0, map.Up.Length)
        from across in Enumerable.Range(0, map.Across.Length)
        let glow = map[across, up]?.GlowMcdPerM2
        where glow is not null
        select glow.Value;

    private static char Mark(MapCell? cell, bool ascii) =>
        cell switch
        {
            null => ' ',
            { MissedCount: 0 } => ascii ? 'O' : '●',
            { MissedCount: 1 } => ascii ? 'o' : '○',
            { MissedCount: null } => 'x',
            _ => ascii ? '.' : '·',
        };

    private static void Axes(Leaf leaf, Area area, MapPlaces places, DesignMap map)
    {
        for (int up = 0; up < places.UpCount; up += 2)
        {
            int row = places.TopY + ((places.UpCount - 1 - up) * places.CellRows) + (places.CellRows / 2);
            leaf.PutRight(places.X - 1, row, Digits.Significant(map.Up[up], 3), Look.Plain.Faint);
        }
        int below = places.TopY + (places.UpCount * places.CellRows);
        int free = 0;
        for (int across = 0; across < places.AcrossCount; across++)
        {
            string text = Digits.Significant(map.Across[across], 3);
            int x = places.X + (across * places.CellColumns) + (places.CellColumns / 2) - (text.Length / 2);
            if (x >= free && x + text.Length < area.X + area.Columns)
            {
                free = leaf.Put(x, below, text, Look.Plain.Faint) + 2;
            }
        }
        string unit = map.AcrossKey.EndsWith("percent", StringComparison.Ordinal)
            ? "%"
            : "g per 100 g of resin";
        leaf.Put(area.X, below + 1, $"loading, {unit}", Look.Plain.Faint);
    }

    private static void Legend(Leaf leaf, Area area)
    {
        string text = leaf.Ascii
            ? "@ here  O all met  o misses one  . more"
            : "@ here  ● all met  ○ misses one  · more";
        leaf.Put(area.X, area.Y + area.Rows - 1, text, Look.Plain.Faint, area.Columns);
    }
}
