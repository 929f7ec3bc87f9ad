using GlowMix.Console.Plots;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Reports;

/// <summary>A pour that runs out of level: white or glow over its depth.</summary>
internal static class AlongChart
{
    private const double Height = 190;

    /// <summary>One for the white and one for the glow, as far as there are; none where the pour is level.</summary>
    public static IEnumerable<Illustration> Of(Prediction prediction)
    {
        var along = prediction.Along;
        if (along.Count == 0)
        {
            yield break;
        }
        if (along.All(p => p.CctK is not null))
        {
            yield return Chart(
                along,
                "White along the pour",
                "CCT, K",
                p => p.CctK!.Value,
                Digits.Cct,
                "lit"
            );
        }
        if (along.All(p => p.LuminanceAt10MinMcdPerM2 is not null))
        {
            yield return Chart(
                along,
                "Glow along the pour",
                "mcd/m² at 10 min",
                p => p.LuminanceAt10MinMcdPerM2!.Value,
                Digits.Two,
                "glow"
            );
        }
    }

    private static Illustration Chart(
        IReadOnlyList<AlongPlace> along,
        string name,
        string unit,
        Func<AlongPlace, double> figure,
        Func<double?, string> write,
        string looks
    )
    {
        double[] depths = [.. along.Select(p => p.DepthMm)];
        double[] values = [.. along.Select(figure)];
        double room = Math.Max(0.2 * (values.Max() - values.Min()), 0.01 * values.Max());
        var chart = new Chart(
            Axis.Linear("mm deep", depths.Min() - 0.05, depths.Max() + 0.05),
            Axis.Linear(unit, Math.Max(0, values.Min() - room), values.Max() + room + 1e-9),
            Height
        ).Curve(depths, values, looks);
        for (int i = 0; i < depths.Length; i++)
        {
            chart.Mark(depths[i], values[i], "dot", along[i].Place, looks);
        }
        string[][] rows =
        [
            .. along.Select(p => new[] { p.Place, Digits.Plain(Math.Round(p.DepthMm, 3)), write(figure(p)) }),
        ];
        return new(
            chart.Drawn(name, string.Join("; ", rows.Select(r => $"{r[0]} {r[1]} mm: {r[2]} {unit}"))),
            $"{name}, from the shallow end to the deep one.",
            ["place", "mm", unit],
            rows
        );
    }
}
