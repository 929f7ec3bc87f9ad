using System.Collections.Immutable;
using GlowMix.Documents;
using GlowMix.LitState;
using GlowMix.Materials;
using GlowMix.Optics.Grains;
using GlowMix.Pieces;
using GlowMix.Recipes;

namespace GlowMix.Predictions;

/// <summary>What keeps a piece that can be put together from being predicted: targets without a figure, LEDs and pigments that contradict themselves.</summary>
internal sealed class PredictionChecks(OpticsShelf optics, PigmentSheets sheets, LadderShelf ladders)
{
    /// <summary>All such problems.</summary>
    public ImmutableArray<Problem> Of(Piece piece) =>
        [
            .. TargetProblems(piece.Recipe),
            .. LedProblems(piece),
            .. piece.Layers.Where(l => l.HasPigment).SelectMany(l => PigmentProblems(piece, l)).Distinct(),
        ];

    private static IEnumerable<Problem> TargetProblems(Recipe recipe)
    {
        for (int i = 0; i < recipe.Targets.Length; i++)
        {
            var target = recipe.Targets[i];
            if (FigureCatalogue.Find(target.Figure, target.AtMinutes) is null)
            {
                var near = NearestWord.Of(
                    target.Figure,
                    FigureCatalogue.All.Select(f => f.Family).Distinct()
                );
                yield return recipe.ProblemAt(
                    $"targets.{i + 1}.figure",
                    PredictionTexts.NoSuchFigure(target.Figure, near)
                );
            }
        }
    }

    private static IEnumerable<Problem> LedProblems(Piece piece)
    {
        var first = FirstPass.Of(PieceLight.BandsOf(piece), piece.Resin.RefractiveIndex.Value);
        if (first.Any(s => s.Samples.ContainsAnyExceptInRange(0, double.PositiveInfinity)))
        {
            yield return piece.Recipe.ProblemAt(
                "led",
                PredictionTexts.LedContradicts(piece.Led.Name, piece.Resin.Name)
            );
        }
    }

    private IEnumerable<Problem> PigmentProblems(Piece piece, PieceLayer layer)
    {
        string place = $"layers.{layer.Name}.pigment";
        var (sample, problems) = sheets.SampleOf(layer.Pigment!);
        foreach (var problem in problems)
        {
            yield return problem;
        }
        if (sample is null)
        {
            yield break;
        }
        var pigment = layer.Pigment!;
        string? refusal =
            GrainRefusal(pigment, piece.Resin, layer.GrainMedianUm, layer.GrainGsd)
            ?? GrainRefusal(pigment, sample.Resin, pigment.GrainMedianUm.Value, pigment.GrainGsd.Value)
            ?? (
                ladders.FitOf(sample, Variation.Likely).Refusal is { } text
                    ? PredictionTexts.SheetRefused(pigment.Name, text)
                    : null
            );
        if (refusal is not null)
        {
            yield return piece.Recipe.ProblemAt(place, refusal);
        }
    }

    /// <summary>Why grains that a recipe or a file may name are still not computed; null if they are.</summary>
    private string? GrainRefusal(Pigment pigment, Resin resin, double medianUm, double gsd)
    {
        try
        {
            _ = optics.GrainsOf(pigment, resin, medianUm, gsd);
            return null;
        }
        catch (ArgumentOutOfRangeException e) when (e.ParamName == "resinIndex")
        {
            return PredictionTexts.ResinTooDense(resin.Name);
        }
        catch (ArgumentOutOfRangeException e)
            when (e.ParamName is "sizes" or "medianUm" or "geometricStandardDeviation")
        {
            return PredictionTexts.GrainsTooLarge(medianUm, gsd, GrainTable.DefaultSizeCount);
        }
    }
}
