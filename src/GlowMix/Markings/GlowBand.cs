using GlowMix.Predictions;

namespace GlowMix.Markings;

/// <summary>The glow of a piece with pigment, with the band of its bounding runs.</summary>
internal sealed class GlowBand
{
    private readonly PieceGlow[] glows;

    /// <param name="runs">The likely run among them.</param>
    public GlowBand(IReadOnlyList<Run> runs)
    {
        glows = [.. runs.Select(r => r.Glow!)];
        Likely = runs.First(r => r.Variation == Variation.Likely).Glow!;
    }

    /// <summary>The band of a piece that does not glow.</summary>
    public static Band None { get; } = new(0, 0, 0);

    public PieceGlow Likely { get; }

    public Band LuminanceMcdPerM2(double minutes) => BandOf(g => g.Photopic.LuminanceMcdM2(minutes));

    public Band MinutesUntil(double limitMcdPerM2) => BandOf(g => g.Photopic.MinutesUntil(limitMcdPerM2));

    private Band BandOf(Func<PieceGlow, double> figure)
    {
        double[] values = [.. glows.Select(figure)];
        return new(values.Min(), figure(Likely), values.Max());
    }
}
