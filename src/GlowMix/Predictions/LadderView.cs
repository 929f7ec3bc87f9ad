using GlowMix.Afterglow;

namespace GlowMix.Predictions;

/// <summary>How well a ladder reproduces the sheet it was fitted to.</summary>
/// <param name="Fit">The ladder or its refusal, residuals in percent, and the last minute the sheet tells.</param>
public sealed record LadderView(LadderFitResult Fit);
