namespace GlowMix.Readings.Fit;

/// <summary>One reading, number by number, and what the model has for it.</summary>
internal abstract class FitBlock
{
    /// <summary>Its file.</summary>
    public required string Name { get; init; }

    /// <summary>What was read, in words.</summary>
    public required string State { get; init; }

    /// <summary>Where each number was read: nm or min.</summary>
    public required double[] At { get; init; }

    /// <summary>Logarithms of what was read.</summary>
    public required double[] LogRead { get; init; }

    /// <summary>Their standard deviations.</summary>
    public required double[] Deviations { get; init; }

    /// <summary>Numbers that count: those read, less what was spent on an unknown level.</summary>
    public abstract double Freedom { get; }

    /// <summary>Logarithms as the model has them.</summary>
    public abstract double[] LogPredicted(FitDraft draft);

    /// <summary>Read less predicted, in logarithms, with the level that fits best where it is not known.</summary>
    public abstract double[] Residuals(FitDraft draft);
}
