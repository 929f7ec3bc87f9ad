using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Readings;

/// <summary>A glow read at several times in the dark.</summary>
public sealed record DecayReading
{
    /// <summary>Readings of fewer display steps than this are too few to use.</summary>
    public const double LeastSteps = 5;

    /// <summary>The file as the user named it.</summary>
    public required string File { get; init; }

    /// <summary>Minutes since the light went off, rising; those before it are below zero.</summary>
    public required ImmutableArray<double> Minutes { get; init; }

    /// <summary>One value a time, in <see cref="Unit"/>.</summary>
    public required ImmutableArray<double> Values { get; init; }

    /// <summary>What the values count.</summary>
    public required DecayUnit Unit { get; init; }

    /// <summary>The step of the meter's display, in <see cref="Unit"/>; 0 where it is not known.</summary>
    public required double DisplayStep { get; init; }

    /// <summary>What to know before trusting it, in the order in which it was found.</summary>
    public ImmutableArray<Warning> Warnings { get; init; } = [];

    /// <summary>How the file was understood.</summary>
    public required TableFindings Findings { get; init; }

    /// <summary>Read in the dark, and with enough steps of the display to say something.</summary>
    /// <param name="index">Index of the reading.</param>
    public bool IsUsable(int index) =>
        Minutes[index] > 0 && Values[index] > 0 && Values[index] >= LeastSteps * DisplayStep * (1 - 1e-9);
}
