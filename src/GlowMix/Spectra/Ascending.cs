namespace GlowMix.Spectra;

/// <summary>The order of numbers for sorting.</summary>
/// <remarks>
/// Without an order the framework takes a sorter of its own for plain numbers, which is compiled at each start of the program;
/// sorting by a comparison is compiled ahead.
/// </remarks>
internal static class Ascending
{
    /// <summary>Least first.</summary>
    public static int Order(double a, double b) => a.CompareTo(b);
}
