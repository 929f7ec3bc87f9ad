using GlowMix.Choosing;

namespace GlowMix.Console.Plots;

/// <summary>Figures along the values of a sweep.</summary>
internal static class SweepPlots
{
    private const double LogarithmicFrom = 8;

    /// <summary>
    /// A figure over the first key: with its band for one key; for two, a curve at the lowest, a middle and the highest value
    /// of the second. Null where there is nothing to draw.
    /// </summary>
    public static Plot? Of(SweepTable table, int figure)
    {
        var curves = table.Axes.Length == 1 ? WithBand(table, figure) : AtValuesOfSecond(table, figure);
        List<double> values = [.. curves.SelectMany(c => c.Ys)];
        if (values.Count == 0 || curves.All(c => c.Ys.Count < 2))
        {
            return null;
        }
        var axis = table.Axes[0];
        string key = axis.KeyPath[(axis.KeyPath.LastIndexOf('.') + 1)..];
        return new(
            $"Along {key}",
            Axis.Linear(key, axis.Values[0], axis.Values[^1]),
            UpAxis(table.Figures[figure].Name, values.Min(), values.Max()),
            curves
        );
    }

    private static List<Curve> WithBand(SweepTable table, int figure)
    {
        var curves = new List<Curve>();
        bool isBand = table.Points.Any(p => p.Figures[figure].Low != p.Figures[figure].High);
        if (isBand)
        {
            curves.AddRange(Curves("low, high", table.Points, p => p.Figures[figure].Low, LineMark.Dotted));
            curves.AddRange(Curves("", table.Points, p => p.Figures[figure].High, LineMark.Dotted));
        }
        curves.AddRange(
            Curves(isBand ? "likely" : "", table.Points, p => p.Figures[figure].Likely, LineMark.Solid)
        );
        return curves;
    }

    private static List<Curve> AtValuesOfSecond(SweepTable table, int figure)
    {
        var second = table.Axes[1];
        string key = second.KeyPath[(second.KeyPath.LastIndexOf('.') + 1)..];
        var curves = new List<Curve>();
        int[] shown = [0, second.Values.Length / 2, second.Values.Length - 1];
        LineMark[] marks = [LineMark.Dotted, LineMark.Dashed, LineMark.Solid];
        for (int i = 0; i < shown.Length; i++)
        {
            double value = second.Values[shown[i]];
            if (i == 0 || shown[i] != shown[i - 1])
            {
                curves.AddRange(
                    Curves(
                        $"{key} {Texts.Digits.Significant(value, 4)}",
                        table.Points.Where(p => p.At[1] == value),
                        p => p.Figures[figure].Likely,
                        marks[i]
                    )
                );
            }
        }
        return curves;
    }

    // A figure that does not exist everywhere is drawn in pieces.
    private static IEnumerable<Curve> Curves(
        string name,
        IEnumerable<SweepPoint> points,
        Func<SweepPoint, double?> value,
        LineMark mark
    )
    {
        var xs = new List<double>();
        var ys = new List<double>();
        foreach (var point in points.Append(null))
        {
            if (point is not null && value(point) is double y)
            {
                xs.Add(point.At[0]);
                ys.Add(y);
            }
            else if (xs.Count > 0)
            {
                yield return new(name, xs, ys, mark);
                (xs, ys, name) = ([], [], "");
            }
        }
    }

    private static Axis UpAxis(string label, double least, double most)
    {
        if (least > 0 && most / least >= LogarithmicFrom)
        {
            return Axis.Logarithmic(label, RoundBelow(least), RoundAbove(most));
        }
        double room = Math.Max((most - least) * 0.05, Math.Max(Math.Abs(most), 1e-6) * 1e-3);
        return Axis.Linear(label, least - room, most + room);
    }

    // 1, 2 or 5 times a power of ten.
    private static double RoundBelow(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return power
            * (
                value >= 5 * power ? 5
                : value >= 2 * power ? 2
                : 1
            );
    }

    private static double RoundAbove(double value)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return power
            * (
                value <= power ? 1
                : value <= 2 * power ? 2
                : value <= 5 * power ? 5
                : 10
            );
    }
}
