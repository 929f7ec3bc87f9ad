namespace GlowMix.Console.Plots;

/// <summary>Points joined by a line.</summary>
/// <param name="Name">For the legend; an empty name stands in none.</param>
/// <param name="Xs">Rising.</param>
/// <param name="Ys">One a point.</param>
/// <param name="Mark">How it is told from others.</param>
internal sealed record Curve(string Name, IReadOnlyList<double> Xs, IReadOnlyList<double> Ys, LineMark Mark);
