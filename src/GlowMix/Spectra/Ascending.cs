using System.Collections.Immutable;

namespace GlowMix.Spectra;

/// <summary>Sorting by numbers.</summary>
/// <remarks>
/// Without an order the framework takes a sorter of its own for plain numbers, which is compiled at each start of the program;
/// sorting by a comparison is compiled ahead.
/// </remarks>
internal static class Ascending
{
    /// <summary>Least first.</summary>
    public static int Order(double a, double b) => a.CompareTo(b);

    /// <summary>Things by a number of each, least first; those with the same number stay in their order.</summary>
    public static ImmutableArray<T> By<T>(ImmutableArray<T> items, Func<T, double> number)
        where T : class
    {
        var numbers = new double[items.Length];
        var order = new int[items.Length];
        for (int i = 0; i < order.Length; i++)
        {
            (numbers[i], order[i]) = (number(items[i]), i);
        }
        Array.Sort(
            order,
            (a, b) => Order(numbers[a], numbers[b]) is not 0 and var byNumber ? byNumber : a.CompareTo(b)
        );
        return [.. Array.ConvertAll(order, i => items[i])];
    }
}
