namespace GlowMix.Materials.Calibrations;

/// <summary>A number that readings told.</summary>
/// <param name="Value">In the unit of whoever holds it.</param>
/// <param name="StandardError">One standard deviation in the same unit; null where it was held, not fitted.</param>
public readonly record struct CalibratedNumber(double Value, double? StandardError)
{
    /// <summary>The doubt of a factor: two standard errors either way; none where there is no error.</summary>
    internal Doubt AsFactor() =>
        StandardError is > 0 and double error ? Doubt.OfFactor(Math.Exp(2 * error / Value)) : default;

    /// <summary>The doubt of a number between two ends that it cannot pass.</summary>
    internal Doubt Within(double least, double most) =>
        StandardError is > 0 and double error
            ? Doubt.Between(Math.Max(least, Value - (2 * error)), Math.Min(most, Value + (2 * error)))
            : default;
}
