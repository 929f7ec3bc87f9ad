namespace GlowMix.Readings.Files;

/// <summary>Units that may stand behind a number in its own cell.</summary>
internal static class CellUnits
{
    private static readonly string[] Known =
    [
        "nm",
        "um",
        "µm",
        "μm",
        "s",
        "sec",
        "min",
        "h",
        "%",
        "lx",
        "lux",
        "mcd/m²",
        "mcd/m2",
        "cd/m²",
        "cd/m2",
        "counts",
        "cts",
    ];

    /// <summary>The text is such a unit.</summary>
    public static bool IsKnown(ReadOnlySpan<char> text)
    {
        foreach (string unit in Known)
        {
            if (text.Equals(unit, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }
        return IsPower(text);
    }

    // 'W', 'mW', 'µW/cm²/nm': what is per what is told by the header or not at all.
    private static bool IsPower(ReadOnlySpan<char> text)
    {
        var watts = text is ['m' or 'u' or 'µ' or 'μ' or 'n', .. var rest] ? rest : text;
        return watts is ['W' or 'w'] or ['W' or 'w', '/' or ' ' or '·' or '*', ..];
    }
}
