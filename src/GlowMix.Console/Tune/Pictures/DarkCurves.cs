using GlowMix.Console.Plots;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>The decay: likely with its band, at the start, and the limit.</summary>
internal static class DarkCurves
{
    private const double FloorOfLimit = 0.1;

    /// <summary>Paints them.</summary>
    public static void Paint(
        Leaf leaf,
        Area area,
        Prediction now,
        Prediction? start,
        bool hasBands,
        Palette palette
    )
    {
        if (now.Decay is not { } decay)
        {
            leaf.Put(area.X + 6, area.Y + (area.Rows / 2), "No pigment, no glow.", palette.DarkFaint);
            return;
        }
        double brightest = Math.Max(decay.HighMcdPerM2.Max(), start?.Decay?.LikelyMcdPerM2.Max() ?? 0);
        double floor = DecadeBelow(Math.Min(now.LimitMcdPerM2, 0.3) * FloorOfLimit);
        if (brightest <= floor)
        {
            leaf.Put(area.X + 6, area.Y + (area.Rows / 2), "Too dark to draw.", palette.DarkFaint);
            return;
        }
        var curves = new List<DrawnCurve>
        {
            new(
                new(
                    $"limit {Digits.Plain(now.LimitMcdPerM2)}",
                    [decay.Minutes[0], decay.Minutes[^1]],
                    [now.LimitMcdPerM2, now.LimitMcdPerM2],
                    LineMark.Dashed
                ),
                palette.DarkFaint
            ),
        };
        if (start?.Decay is { } then && !ReferenceEquals(start, now))
        {
            curves.Add(
                new(
                    new("at the start", then.Minutes, then.LikelyMcdPerM2, LineMark.Dotted),
                    palette.DarkFaint
                )
            );
        }
        if (hasBands)
        {
            curves.Add(
                new(new("low, high", decay.Minutes, decay.LowMcdPerM2, LineMark.Dotted), palette.DarkBand)
            );
            curves.Add(new(new("", decay.Minutes, decay.HighMcdPerM2, LineMark.Dotted), palette.DarkBand));
        }
        curves.Add(
            new(new("likely", decay.Minutes, decay.LikelyMcdPerM2, LineMark.Solid), palette.Dark.Bold)
        );
        CurvePicture.Paint(
            leaf,
            area,
            Axis.Logarithmic("min", decay.Minutes[0], decay.Minutes[^1]),
            Axis.Logarithmic("mcd/m²", floor, DecadeAbove(Math.Max(brightest, now.LimitMcdPerM2))),
            curves,
            palette.DarkFaint
        );
    }

    private static double DecadeBelow(double value) => Math.Pow(10, Math.Floor(Math.Log10(value) + 1e-9));

    private static double DecadeAbove(double value) => Math.Pow(10, Math.Ceiling(Math.Log10(value) + 1e-9));
}
