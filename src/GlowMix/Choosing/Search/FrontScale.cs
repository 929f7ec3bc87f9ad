namespace GlowMix.Choosing.Search;

/// <summary>
/// The span of a trade-off front, on which its points are compared: off-white as it is, glow in factors, as the eye takes it.
/// </summary>
internal readonly struct FrontScale
{
    // A thousandth of the brightest is as good as dark: without this end, a point without pigment would stretch the scale
    // without bound.
    private const double DarkestShare = 1e-3;

    private readonly double offWhiteLow;
    private readonly double offWhiteSpan;
    private readonly double brightest;
    private readonly double glowSpan;

    /// <param name="front">Points that do not dominate each other, at least one.</param>
    public FrontScale(IReadOnlyList<DesignResult> front)
    {
        offWhiteLow = front.Min(r => r.OffWhite);
        offWhiteSpan = OrOne(front.Max(r => r.OffWhite) - offWhiteLow);
        brightest = front.Max(r => r.GlowMcdPerM2);
        glowSpan = OrOne(Dimming(front.Min(r => r.GlowMcdPerM2)));
    }

    /// <summary>0 at the whitest point of the front, 1 at its least white.</summary>
    public double OffWhite(DesignResult result) => (result.OffWhite - offWhiteLow) / offWhiteSpan;

    /// <summary>0 at the brightest point of the front, 1 at its darkest.</summary>
    public double Dark(DesignResult result) => glowSpan > 0 ? Dimming(result.GlowMcdPerM2) / glowSpan : 0;

    /// <summary>
    /// Distance from a point as white as the whitest and as bright as the brightest, each in spans of the front (compromise
    /// programming: Yu 1973, Management Science 19, 936; from memory, not looked up).
    /// </summary>
    public double FromIdeal(DesignResult result)
    {
        double dark = Dark(result);
        double off = OffWhite(result);
        return Math.Sqrt((off * off) + (dark * dark));
    }

    // A front of one point has no span.
    private static double OrOne(double span) => span > 0 ? span : 1;

    private readonly double Dimming(double glow) =>
        brightest > 0 ? Math.Log(brightest / Math.Max(glow, brightest * DarkestShare)) : 0;
}
