using GlowMix.Afterglow;
using GlowMix.Materials;
using GlowMix.Pieces;

namespace GlowMix.Predictions;

/// <summary>What one run of the model takes differently from the materials' own numbers.</summary>
/// <param name="PigmentAbsorptionFactor">On the absorption of every pigment's grains.</param>
/// <param name="LadderSmoothing">λ of the ladder fit.</param>
internal sealed record Variation(double PigmentAbsorptionFactor, double LadderSmoothing)
{
    /// <summary>Every number as it stands.</summary>
    public static Variation Likely { get; } = new(1, LadderFit.LikelySmoothing);

    /// <summary>Factors on absorption that bound the doubt: pigment strength is known to a factor of two.</summary>
    public static IReadOnlyList<double> AbsorptionFactors { get; } = [0.5, 1, 2];

    /// <summary>The same for a piece: where readings told the strength of all its pigments, two standard errors.</summary>
    public static IReadOnlyList<double> AbsorptionFactorsOf(Piece piece)
    {
        var pigments = piece.Layers.Where(l => l.HasPigment).Select(l => l.Pigment!).ToArray();
        if (pigments.Any(p => p.AbsorptionPerMm.Mark != SourceMark.Users || p.AsOnTheShelf is null))
        {
            return AbsorptionFactors;
        }
        double factor = pigments.Max(p => p.AbsorptionPerMm.Doubt.HighOf(1));
        return [1 / factor, 1, factor];
    }

    /// <summary>Smoothings that bound the doubt.</summary>
    public static IReadOnlyList<double> Smoothings { get; } =
    [LadderFit.LooseSmoothing, LadderFit.LikelySmoothing, LadderFit.StiffSmoothing];
}
