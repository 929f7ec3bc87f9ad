using GlowMix.Afterglow;

namespace GlowMix.Casting;

/// <summary>The smallest step a scale shows. The default shows nothing: make it with a step.</summary>
internal readonly record struct ScaleStep
{
    // What is a whole number of steps but for its last digit, such as 0.3 / 0.1, stays one.
    private const double SlackSteps = 1e-9;

    /// <param name="stepG">g, above 0.</param>
    public ScaleStep(double stepG) => G = Demand.Positive(stepG, nameof(stepG), "g");

    public double G { get; }

    /// <summary>The nearest mass it can show, g; of two as near the heavier.</summary>
    public double NearestG(double massG) => OfSteps(Math.Floor((massG / G) + 0.5 + SlackSteps));

    // Divided where the step is 1/n, so that 0.1 g gives 12.3 and not 12.3000000000000007.
    private double OfSteps(double steps)
    {
        double perGram = Math.Round(1 / G);
        return Math.Abs((perGram * G) - 1) < SlackSteps ? steps / perGram : steps * G;
    }
}
