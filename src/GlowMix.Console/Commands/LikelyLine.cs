using GlowMix.Choosing;
using GlowMix.Console.Texts;
using GlowMix.Predictions;

namespace GlowMix.Console.Commands;

/// <summary>On a terminal the likely figures at once, in one line that the page replaces when its bands are drawn; nothing on a pipe.</summary>
internal sealed class LikelyLine(Surroundings surroundings) : IDrawWatcher, IDisposable
{
    private ProgressLine? progress;

    /// <inheritdoc/>
    public void Likely(Prediction prediction)
    {
        var figures = prediction.Figures;
        string white = figures["lit.cct_k"] is double k
            ? $"{Digits.Cct(k)} K, Duv {Digits.Duv(figures["lit.duv"])}"
            : "no CCT";
        string glow = figures["afterglow.luminance_mcd_m2[10]"] is double l
            ? $", {Digits.Two(l)} mcd/m² at 10 min"
            : "";
        progress = new(surroundings, $"draws for the bands; likely {white}{glow}");
        progress.Show(0, Forecaster.UsualDraws);
    }

    /// <inheritdoc/>
    public void Done(int draws)
    {
        if (draws % 16 == 0)
        {
            progress?.Show(draws, Forecaster.UsualDraws);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => progress?.Dispose();
}
