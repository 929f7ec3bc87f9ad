using System.Collections.Immutable;
using GlowMix.Predictions;

namespace GlowMix.Choosing;

/// <summary>A design that a search puts forward.</summary>
/// <param name="Choices">Every key that was turned, by its full path, and its value as a recipe writes it.</param>
/// <param name="OffWhite">Δu′v′ from the white aimed at; null if no light comes out.</param>
/// <param name="GlowMcdPerM2">Luminance at the minutes aimed at; 0 without pigment.</param>
/// <param name="Prediction">The recipe with these choices, predicted as any recipe is, its targets judged.</param>
public sealed record BalanceDesign(
    ImmutableArray<KeyValuePair<string, string>> Choices,
    double? OffWhite,
    double GlowMcdPerM2,
    Prediction Prediction
);
