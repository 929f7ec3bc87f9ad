using GlowMix.Console.Texts;
using GlowMix.Materials;
using GlowMix.Pieces;
using GlowMix.Predictions;

namespace GlowMix.Console.Tune.Model;

/// <summary>Where each number of a piece comes from, and what to measure first.</summary>
internal static class SourcesPage
{
    /// <summary>The page.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="prediction">Its prediction; null until there is one.</param>
    public static IReadOnlyList<PageBlock> Of(Piece piece, Prediction? prediction)
    {
        var blocks = new List<PageBlock> { new PageBlock.Title("Origins: where each number comes from") };
        if (prediction is { Assumptions.Count: > 0 })
        {
            blocks.Add(new PageBlock.Heading("Assumed; measure first what stands first"));
            blocks.Add(new PageBlock.Points([.. prediction.Assumptions.Select(a => $"{a.What}: {a.Text}")]));
        }
        if (!piece.TakenAs.IsEmpty)
        {
            blocks.Add(new PageBlock.Heading("Left open by the recipe, and taken as"));
            blocks.Add(new PageBlock.Paragraph(string.Join(", ", piece.TakenAs) + "."));
        }
        if (prediction is { Warnings.Count: > 0 })
        {
            blocks.Add(new PageBlock.Heading("Where the model leaves its range"));
            blocks.Add(new PageBlock.Points([.. prediction.Warnings.Select(w => w.Text)]));
        }
        foreach (var material in MaterialsOf(piece))
        {
            blocks.Add(new PageBlock.Heading($"{material.Name}: {material.Title}"));
            blocks.Add(new PageBlock.Points([.. material.Facts.Select(Line)]));
        }
        return blocks;
    }

    private static string Line(MaterialFact fact)
    {
        string mark = fact.Note.Mark == SourceMark.Assumed ? "ASSUMED " : "";
        return $"{mark}{fact.Key} {fact.Value}. {fact.Note.Text}";
    }

    private static IEnumerable<Material> MaterialsOf(Piece piece) =>
        new Material?[] { piece.Led, piece.Resin, piece.Board }
            .Concat(piece.Layers.Where(l => l.HasPigment).Select(l => l.Pigment))
            .Concat(piece.Steps.Select(s => s.Lamp))
            .OfType<Material>()
            .Distinct();
}
