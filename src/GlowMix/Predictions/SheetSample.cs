using GlowMix.Materials;

namespace GlowMix.Predictions;

/// <summary>A pigment with the materials of its sheet's sample.</summary>
internal sealed record SheetSample(Pigment Pigment, Resin Resin, Board Backing, Lamp Lamp);
