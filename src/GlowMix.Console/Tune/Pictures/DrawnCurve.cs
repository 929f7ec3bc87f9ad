using GlowMix.Console.Plots;

namespace GlowMix.Console.Tune.Pictures;

/// <summary>A curve and how it looks.</summary>
internal sealed record DrawnCurve(Curve Curve, Look Look);
