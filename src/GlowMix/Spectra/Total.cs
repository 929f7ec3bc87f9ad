namespace GlowMix.Spectra;

/// <summary>Sums of a few numbers.</summary>
/// <remarks>The framework's own over plain numbers is compiled at each start of the program; this is compiled ahead.</remarks>
internal static class Total
{
    /// <summary>Of numbers.</summary>
    public static double Of(ReadOnlySpan<double> numbers)
    {
        double sum = 0;
        foreach (double number in numbers)
        {
            sum += number;
        }
        return sum;
    }

    /// <summary>Of a number of each thing.</summary>
    public static double Of<T>(ReadOnlySpan<T> things, Func<T, double> number)
        where T : class
    {
        double sum = 0;
        foreach (var thing in things)
        {
            sum += number(thing);
        }
        return sum;
    }
}
