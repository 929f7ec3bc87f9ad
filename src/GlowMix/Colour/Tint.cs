namespace GlowMix.Colour;

/// <summary>How green or pink a white looks, in words.</summary>
public static class Tint
{
    /// <summary>A phrase for a distance from the Planckian locus.</summary>
    /// <param name="duv">Duv, CIE 1960 u, v; positive is greenish, negative pinkish.</param>
    /// <remarks>
    /// Own scale, no source: under 0.004 nothing is seen, to 0.006 a trace, to 0.015 slightly, to 0.03 clearly. (The
    /// nominal whites of ANSI C78.377 end 0.006 from their centres.)
    /// </remarks>
    public static string InWords(double duv)
    {
        bool green = duv > 0;
        string tinged = green ? "greenish" : "pinkish";
        return Math.Abs(duv) switch
        {
            < 0.004 => "no tint to see",
            <= 0.006 => $"a trace {tinged}",
            <= 0.015 => $"slightly {tinged}",
            <= 0.03 => $"clearly {tinged}",
            _ => green ? "more green than white" : "more pink than white",
        };
    }
}
