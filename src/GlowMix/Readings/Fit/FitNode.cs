using System.Globalization;

namespace GlowMix.Readings.Fit;

/// <summary>A place on the lattice of strengths: whole steps of each pigment's absorption and of the resin's.</summary>
internal sealed class FitNode : IEquatable<FitNode>
{
    private readonly (string Pigment, int Step)[] steps;
    private readonly string key;

    /// <param name="resinStep">Steps of the resin's absorption.</param>
    /// <param name="steps">Steps of each pigment, in any fixed order.</param>
    public FitNode(int resinStep, IEnumerable<(string Pigment, int Step)> steps)
    {
        ResinStep = resinStep;
        this.steps = [.. steps];
        key = string.Create(
            CultureInfo.InvariantCulture,
            $"{resinStep}|{string.Join('|', this.steps.Select(s => $"{s.Pigment}:{s.Step}"))}"
        );
    }

    public int ResinStep { get; }

    /// <summary>Steps of a pigment; 0 for one that is not named.</summary>
    public int StepOf(string pigment) => steps.FirstOrDefault(s => s.Pigment == pigment).Step;

    public bool Equals(FitNode? other) => other is not null && key == other.key;

    public override bool Equals(object? obj) => Equals(obj as FitNode);

    public override int GetHashCode() => string.GetHashCode(key, StringComparison.Ordinal);
}
