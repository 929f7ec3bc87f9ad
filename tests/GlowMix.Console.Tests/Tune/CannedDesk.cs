using GlowMix.Console.Tune.Model;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Tune;

/// <summary>Answers at once, or when it is told to, with an invented prediction whose glow follows the recipe's loading.</summary>
internal sealed class CannedDesk : IDesk
{
    private readonly List<RecipeDocument> asked = [];

    public TuneModel? Model { get; set; }

    /// <summary>Answers wait until <see cref="AnswerAll"/>.</summary>
    public bool Holds { get; set; }

    public int AskedCount { get; private set; }

    public void Ask(RecipeDocument document, params IEnumerable<RecipeDocument> also)
    {
        AskedCount++;
        asked.Clear();
        asked.AddRange([document, .. also]);
        if (!Holds)
        {
            AnswerAll();
        }
    }

    public IEnumerable<RecipeDocument> Ahead { get; private set; } = [];

    public void LookAhead(IEnumerable<RecipeDocument> documents) => Ahead = documents;

    public void AnswerAll(bool banded = true)
    {
        foreach (var document in asked.ToArray())
        {
            Model?.Take(Answer(document, banded));
        }
    }

    public static Outlook Answer(RecipeDocument document, bool banded)
    {
        double loading = document.Recipe?.Layers.Max(l => l.LoadingPercent) ?? 0;
        return new(
            document.Text,
            SamplePredictions.StairEdge.WithFigure("afterglow.luminance_mcd_m2[60]", loading / 5) with
            {
                Cut = new(
                    3,
                    0.7,
                    [new("glow", 2.5, "green-aluminate", loading), new("cover", 0.5, null, 0)],
                    [new(0, 0.7, 0.1, 5, 7), new(0.7, 1.5, 1, 17, 7), new(1.5, 2.5, 0.5, 18, 7)]
                ),
            },
            [],
            banded
        );
    }
}
