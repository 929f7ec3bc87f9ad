using GlowMix.Predictions;

namespace GlowMix.Console.Commands;

/// <summary>Is told how the draws of a prediction get on.</summary>
internal interface IDrawWatcher
{
    /// <summary>The likely figures, before anything is drawn.</summary>
    void Likely(Prediction prediction);

    /// <summary>How many draws are done; from any thread.</summary>
    void Done(int draws);
}
