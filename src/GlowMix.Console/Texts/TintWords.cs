namespace GlowMix.Console.Texts;

/// <summary>A tint in words, by its distance from the Planckian locus. A scale of our own, no source.</summary>
internal static class TintWords
{
    private const double Trace = 0.004;
    private const double Slight = 0.006;
    private const double Clear = 0.015;
    private const double Strong = 0.03;

    /// <summary>'no tint to see', 'a trace of green', 'slightly greenish', 'clearly pinkish', 'more green than white'.</summary>
    /// <param name="duv">Positive above the locus, greenish; negative below, pinkish.</param>
    public static string Of(double duv)
    {
        string colour = duv > 0 ? "green" : "pink";
        return Math.Abs(duv) switch
        {
            < Trace => "no tint to see",
            <= Slight => $"a trace of {colour}",
            <= Clear => $"slightly {colour}ish",
            <= Strong => $"clearly {colour}ish",
            _ => $"more {colour} than white",
        };
    }
}
