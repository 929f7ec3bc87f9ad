using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Choosing;

/// <summary>The words of what keeps a sweep from beginning.</summary>
public static class SweepTexts
{
    /// <summary>An end that is no number.</summary>
    public const string EndsNotFinite = "both ends of a sweep must be finite numbers";

    /// <summary>The ends in the wrong order.</summary>
    public static string RangeEnds(double from, double to) =>
        Invariant($"the last value is {to}; needed: more than the first, {from}");

    /// <summary>Too few or too many values.</summary>
    public static string ValueCount(double count) =>
        Invariant($"{count} values for one key; allowed: a whole number, 2 to {SweepAxis.MostValues}");

    /// <summary>Too many predictions altogether.</summary>
    public static string PointCount(long count) =>
        Invariant($"{count} predictions; allowed: up to {Sweep.MostPoints} in one sweep");

    /// <summary>Not one or two keys.</summary>
    public static string AxisCount(int count) => Invariant($"{count} keys; allowed: one or two");

    /// <summary>The same key twice.</summary>
    public static string SameKeyTwice(string path) => $"'{path}' is varied twice";

    /// <summary>A key that holds a word.</summary>
    public static string NotANumberKey(string path) =>
        $"'{path}' holds no number; a sweep goes through numbers only";

    /// <summary>A key that no figure depends on.</summary>
    public static string NoFigureDepends(string path) =>
        $"no figure depends on '{path}'; vary what is poured, lit or charged";

    /// <summary>The recipe refuses a value.</summary>
    public static string Refused(string where, string reason) => $"{where}: {reason}";

    /// <summary>One key at one value.</summary>
    public static string At(string path, double value) => Invariant($"{path} at {value}");

    /// <summary>More of the same.</summary>
    public static string AndMore(int count) =>
        Invariant(
            $"and {count} more {(count == 1 ? "value" : "values")} of the sweep that the recipe could not hold"
        );

    /// <summary>A figure that does not exist.</summary>
    public static string NoSuchFigure(string name, string? hint) =>
        $"no figure is called {ProblemTexts.Quote(name)}{(hint is null ? "" : $"; did you mean '{hint}'?")}";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
