using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Reports;

/// <summary>Where the light of the LED's die went, as one bar.</summary>
internal static class BlueChart
{
    private const double BarTop = 8;
    private const double BarHeight = 26;
    private const double LineHeight = 17;

    private static readonly (string Figure, string Name, string Looks)[] parts =
    [
        ("lit.blue_escaped_percent", "comes out", "share1"),
        ("lit.blue_absorbed_by_pigment_percent", "pigment", "share2"),
        ("lit.blue_taken_back_by_package_percent", "packages", "share3"),
        ("lit.blue_absorbed_by_board_percent", "board", "share4"),
        ("lit.blue_absorbed_by_resin_percent", "resin", "share5"),
    ];

    /// <summary>Null where there is no such budget: packages in air, LEDs without blue.</summary>
    public static Illustration? Of(Prediction prediction)
    {
        var figures = prediction.Figures;
        if (prediction.DepthOverPackagesMm <= 0 || figures[parts[0].Figure] is null)
        {
            return null;
        }
        var drawn = new List<object?>();
        double x = 0;
        for (int i = 0; i < parts.Length; i++)
        {
            var (figure, name, looks) = parts[i];
            double width = Chart.Width * Math.Max(0, figures[figure] ?? 0) / 100;
            drawn.Add(Drawing.Box(x, BarTop, width, BarHeight, Markup.With("class", looks)));
            x += width;
            double line = BarTop + BarHeight + 8 + ((i + 1) * LineHeight);
            drawn.Add(Drawing.Box(0, line - 10, 11, 11, Markup.With("class", looks)));
            drawn.Add(Drawing.Letters(18, line, $"{Digits.Percent(figures[figure])} {name}"));
        }
        double height = BarTop + BarHeight + 16 + (parts.Length * LineHeight);
        var rows = parts.Select(p => new[] { p.Name, Digits.Percent(figures[p.Figure]) }).ToArray();
        return new(
            Drawing.Of(
                Chart.Width,
                height,
                "Where the blue went",
                string.Join(", ", rows.Select(r => $"{r[1]} {r[0]}")),
                "",
                [.. drawn]
            ),
            "Where the light of the LEDs' dies goes: what pigment takes charges it, what packages take is lost or turned into longer waves.",
            ["to", "share"],
            rows
        );
    }
}
