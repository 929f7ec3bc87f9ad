using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Materials;

/// <summary>Reads the sheet_… keys of a pigment.</summary>
internal static class DecaySheetReader
{
    private static readonly NumberRange Minutes = NumberRange.Above(0, 10000);

    public static DecaySheet? Read(MaterialReader reader, DecaySheet? like)
    {
        var loading = reader.Number("sheet_loading_percent", NumberRange.Above(0, 90), like?.LoadingPercent);
        var depth = reader.Number("sheet_depth_mm", NumberRange.Above(0, 50), like?.DepthMm);
        var backing = reader.Word("sheet_backing", like?.Backing);
        var resin = reader.Word("sheet_resin", like?.Resin);
        var lamp = reader.Word("sheet_lamp", like?.Lamp);
        var lux = reader.Number("sheet_illuminance_lx", NumberRange.Above(0, 200000), like?.IlluminanceLx);
        var minutes = reader.Number("sheet_minutes", Minutes, like?.Minutes);
        var temperature = reader.Number(
            "sheet_temperature_c",
            MaterialRanges.TemperatureC,
            like?.TemperatureC
        );
        var points = Points(reader, like?.Points);
        return
            loading is null
            || depth is null
            || backing is null
            || resin is null
            || lamp is null
            || lux is null
            || minutes is null
            || temperature is null
            || points is null
            ? null
            : new()
            {
                LoadingPercent = loading,
                DepthMm = depth,
                Backing = backing,
                Resin = resin,
                Lamp = lamp,
                IlluminanceLx = lux,
                Minutes = minutes,
                TemperatureC = temperature,
                Points = points,
            };
    }

    private static Sourced<ImmutableArray<SheetPoint>>? Points(
        MaterialReader reader,
        Sourced<ImmutableArray<SheetPoint>>? like
    )
    {
        const string Key = "sheet_points";
        if (!reader.Keys.Has(Key) && like is not null)
        {
            reader.Keys.Take(Key);
            reader.Borrow(Key);
            return like;
        }
        return reader
            .Table(Key, "mcd_m2_at_minutes", Minutes, NumberRange.Above(0, 1e6), least: 2)
            ?.Select(table => ImmutableArray.CreateRange(table.Points, p => new SheetPoint(p.At, p.Value)));
    }
}
