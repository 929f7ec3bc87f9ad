using GlowMix.Predictions;

namespace GlowMix.Console.Commands;

/// <summary>Draws that nobody waits for on a terminal.</summary>
internal sealed class UnwatchedDraws : IDrawWatcher
{
    /// <inheritdoc/>
    public void Likely(Prediction prediction) { }

    /// <inheritdoc/>
    public void Done(int draws) { }
}
