using System.Globalization;

namespace GlowMix.Console.Plots;

/// <summary>One axis of a plot: its ends, whether it is logarithmic, and what it counts.</summary>
internal sealed class Axis
{
    private Axis(string label, double from, double to, bool isLogarithmic) =>
        (Label, From, To, IsLogarithmic) = (label, from, to, isLogarithmic);

    /// <summary>What it counts, with the unit.</summary>
    public string Label { get; }

    /// <summary>Its lower end.</summary>
    public double From { get; }

    /// <summary>Its upper end.</summary>
    public double To { get; }

    /// <summary>Equal steps are equal factors.</summary>
    public bool IsLogarithmic { get; }

    /// <summary>An axis of equal steps.</summary>
    public static Axis Linear(string label, double from, double to) =>
        from < to && double.IsFinite(to - from)
            ? new(label, from, to, false)
            : throw new ArgumentOutOfRangeException(nameof(to), to, "An axis must rise.");

    /// <summary>An axis of equal factors; both ends above zero.</summary>
    public static Axis Logarithmic(string label, double from, double to) =>
        from > 0 && from < to && double.IsFinite(to)
            ? new(label, from, to, true)
            : throw new ArgumentOutOfRangeException(
                nameof(to),
                to,
                "A logarithmic axis must rise from above 0."
            );

    /// <summary>Where a value stands, 0 at the lower end and 1 at the upper; what a logarithm does not reach is far below.</summary>
    public double Position(double value) =>
        !IsLogarithmic ? (value - From) / (To - From)
        : value > 0 ? Math.Log(value / From) / Math.Log(To / From)
        : -1000;

    /// <summary>Round values along the axis, at most so many.</summary>
    public IReadOnlyList<double> Ticks(int most) => IsLogarithmic ? Decades(most) : Steps(most);

    /// <summary>A tick as text: '0.01', '20', '1000'.</summary>
    public static string TickText(double value) =>
        (Math.Round(value, 9) + 0.0).ToString(CultureInfo.InvariantCulture);

    // Steps of 1, 2 or 5 times a power of ten.
    private List<double> Steps(int most)
    {
        double least = (To - From) / Math.Max(1, most);
        double power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        double step = power;
        foreach (double factor in (ReadOnlySpan<double>)[1, 2, 5, 10])
        {
            step = factor * power;
            if (step >= least * (1 - 1e-9))
            {
                break;
            }
        }
        var ticks = new List<double>();
        for (double i = Math.Ceiling((From / step) - 1e-9); i * step <= To + (1e-9 * step); i++)
        {
            ticks.Add(i * step);
        }
        return ticks;
    }

    // Whole decades, so many left out between that they fit; where there is room, 2 and 5 between them.
    private List<double> Decades(int most)
    {
        int first = (int)Math.Ceiling(Math.Log10(From) - 1e-9);
        int last = (int)Math.Floor(Math.Log10(To) + 1e-9);
        var fine = new List<double>();
        for (int decade = first - 1; decade <= last; decade++)
        {
            foreach (double factor in (ReadOnlySpan<double>)[1, 2, 5])
            {
                double tick = factor * Math.Pow(10, decade);
                if (tick >= From * (1 - 1e-9) && tick <= To * (1 + 1e-9))
                {
                    fine.Add(tick);
                }
            }
        }
        if (fine.Count <= most)
        {
            return fine;
        }
        int step = Math.Max(1, (int)Math.Ceiling((last - first + 1) / (double)Math.Max(1, most)));
        var ticks = new List<double>();
        for (int decade = first; decade <= last; decade += step)
        {
            ticks.Add(Math.Pow(10, decade));
        }
        return ticks;
    }
}
