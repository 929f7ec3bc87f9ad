using GlowMix.Afterglow;
using GlowMix.Choosing.Draws;
using GlowMix.Predictions;

namespace GlowMix.Markings;

/// <summary>The glow of a piece with pigment, with the band of its draws or of its bounding runs.</summary>
internal sealed class GlowBand
{
    private readonly GlowCurve[] glows;
    private readonly bool isDrawn;

    /// <param name="runs">The likely run among them.</param>
    public GlowBand(IReadOnlyList<Run> runs)
    {
        glows = [.. runs.Select(r => r.Glow!.Photopic)];
        Likely = Run.LikelyOf(runs).Glow!;
    }

    /// <param name="likely">The likely glow.</param>
    /// <param name="draws">Those of draws, one at least.</param>
    public GlowBand(PieceGlow likely, GlowCurve[] draws) => (Likely, glows, isDrawn) = (likely, draws, true);

    /// <summary>The band of a piece that does not glow.</summary>
    public static Band None { get; } = new(0, 0, 0);

    public PieceGlow Likely { get; }

    /// <summary>Draws behind the band; 0 where it is that of the bounding runs.</summary>
    public int DrawCount => isDrawn ? glows.Length : 0;

    public Band LuminanceMcdPerM2(double minutes) => BandOf(g => g.LuminanceMcdM2(minutes));

    public Band MinutesUntil(double limitMcdPerM2) => BandOf(g => g.MinutesUntil(limitMcdPerM2));

    private Band BandOf(Func<GlowCurve, double> figure)
    {
        double[] sorted = [.. glows.Select(figure).Order()];
        double likely = figure(Likely.Photopic);
        return isDrawn ? DrawTable.Around(sorted, likely) : new(sorted[0], likely, sorted[^1]);
    }
}
