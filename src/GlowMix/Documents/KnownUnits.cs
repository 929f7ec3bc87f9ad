using System.Collections.Frozen;
using System.Globalization;

namespace GlowMix.Documents;

/// <summary>Units that keys end in, so that a value in another unit can be converted in the message that refuses it.</summary>
internal static class KnownUnits
{
    // Exact by definition: inch 25.4 mm, pound 453.59237 g, foot-candle 1 lm per square foot.
    private const double MmPerInch = 25.4;
    private const double GramsPerPound = 453.59237;
    private const double LuxPerFootCandle = 1e6 / (144 * MmPerInch * MmPerInch);

    private static readonly FrozenDictionary<string, Unit> units = new Dictionary<string, Unit>
    {
        ["mm"] = new("length", 1),
        ["cm"] = new("length", 10),
        ["m"] = new("length", 1000),
        ["um"] = new("length", 1e-3),
        ["nm"] = new("length", 1e-6),
        ["micron"] = new("length", 1e-3),
        ["microns"] = new("length", 1e-3),
        ["in"] = new("length", MmPerInch),
        ["inch"] = new("length", MmPerInch),
        ["inches"] = new("length", MmPerInch),
        ["mil"] = new("length", MmPerInch / 1000),
        ["mils"] = new("length", MmPerInch / 1000),
        ["thou"] = new("length", MmPerInch / 1000),
        ["ft"] = new("length", 12 * MmPerInch),
        ["c"] = new("temperature", 1),
        ["k"] = new("temperature", 1, -273.15),
        ["f"] = new("temperature", 5 / 9.0, -160 / 9.0),
        ["min"] = new("time", 1),
        ["mins"] = new("time", 1),
        ["minute"] = new("time", 1),
        ["minutes"] = new("time", 1),
        ["s"] = new("time", 1 / 60.0),
        ["sec"] = new("time", 1 / 60.0),
        ["seconds"] = new("time", 1 / 60.0),
        ["h"] = new("time", 60),
        ["hr"] = new("time", 60),
        ["hrs"] = new("time", 60),
        ["hour"] = new("time", 60),
        ["hours"] = new("time", 60),
        ["d"] = new("time", 1440),
        ["days"] = new("time", 1440),
        ["lx"] = new("illuminance", 1),
        ["lux"] = new("illuminance", 1),
        ["klx"] = new("illuminance", 1000),
        ["fc"] = new("illuminance", LuxPerFootCandle),
        ["w_m2"] = new("irradiance", 1),
        ["mw_cm2"] = new("irradiance", 10),
        ["uw_cm2"] = new("irradiance", 0.01),
        ["w_cm2"] = new("irradiance", 1e4),
        ["mcd_m2"] = new("luminance", 1),
        ["cd_m2"] = new("luminance", 1000),
        ["nit"] = new("luminance", 1000),
        ["nits"] = new("luminance", 1000),
        ["ma"] = new("current", 1),
        ["a"] = new("current", 1000),
        ["amps"] = new("current", 1000),
        ["g"] = new("mass", 1),
        ["kg"] = new("mass", 1000),
        ["mg"] = new("mass", 1e-3),
        ["oz"] = new("mass", GramsPerPound / 16),
        ["lb"] = new("mass", GramsPerPound),
        ["per_kg"] = new("per mass", 1),
        ["per_g"] = new("per mass", 1000),
        ["per_100g"] = new("per mass", 10),
        ["per_lb"] = new("per mass", 1000 / GramsPerPound),
        ["per_oz"] = new("per mass", 16_000 / GramsPerPound),
        ["percent"] = new("share", 1),
        ["pct"] = new("share", 1),
        ["fraction"] = new("share", 100),
        ["g_cm3"] = new("density", 1),
        ["g_ml"] = new("density", 1),
        ["kg_m3"] = new("density", 1e-3),
        ["kg_l"] = new("density", 1),
        ["mpa_s"] = new("viscosity", 1),
        ["pa_s"] = new("viscosity", 1000),
        ["cp"] = new("viscosity", 1),
        ["cps"] = new("viscosity", 1),
        ["per_mm"] = new("per length", 1),
        ["per_cm"] = new("per length", 0.1),
        ["per_m"] = new("per length", 1e-3),
        ["ml"] = new("volume", 1),
        ["l"] = new("volume", 1000),
    }.ToFrozenDictionary();

    /// <summary>
    /// The line to write for a key in another unit than the known one ('depth_in', '0.25' → 'depth_mm: 6.35'), or null.
    /// The value is left open where it is no number.
    /// </summary>
    public static string? Convert(string key, string? value, IEnumerable<string> known)
    {
        if (Split(key.ToLowerInvariant()) is not var (stem, from))
        {
            return null;
        }
        foreach (string candidate in known)
        {
            bool sameUnit = candidate.Equals(key, StringComparison.OrdinalIgnoreCase);
            if (
                !sameUnit
                && Split(candidate) is var (knownStem, to)
                && knownStem == stem
                && to.Kind == from.Kind
            )
            {
                return value is not null && NumberText.TryRead(value, out double number)
                    ? $"{candidate}: {Write(((number * from.Factor) + from.Offset - to.Offset) / to.Factor)}"
                    : $"{candidate}: …";
            }
        }
        return null;
    }

    // The longest unit wins: 'cost_per_kg' is no mass.
    private static (string Stem, Unit Unit)? Split(string key)
    {
        if (units.TryGetValue(key, out var whole))
        {
            return ("", whole);
        }
        for (int i = key.IndexOf('_', StringComparison.Ordinal); i >= 0; i = key.IndexOf('_', i + 1))
        {
            if (units.TryGetValue(key[(i + 1)..], out var unit))
            {
                return (key[..i], unit);
            }
        }
        return null;
    }

    private static string Write(double number) => number.ToString("G6", CultureInfo.InvariantCulture);

    // In the unit of the factor 1: value × factor + offset.
    private readonly record struct Unit(string Kind, double Factor, double Offset = 0);
}
