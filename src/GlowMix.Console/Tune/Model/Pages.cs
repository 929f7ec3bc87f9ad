using GlowMix.Console.Texts;
using GlowMix.Markings;
using GlowMix.Materials;
using GlowMix.Predictions;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>Works long pages out beside the text UI.</summary>
/// <param name="predictor">The model.</param>
/// <param name="post">Runs something where the text UI runs.</param>
/// <param name="isPatient">Whoever asks waits.</param>
internal sealed class Pages(Predictor predictor, Action<Action> post, bool isPatient = false)
    : IPages,
        IDisposable
{
    private static readonly TimeSpan handAtRest = TimeSpan.FromMilliseconds(200);

    private readonly LatestWork work = new("pages", handAtRest, ThreadPriority.BelowNormal);

    /// <inheritdoc/>
    public void AskMarkings(RecipeDocument document, Action<IReadOnlyList<PageBlock>> answer)
    {
        if (isPatient)
        {
            answer(Markings(document, CancellationToken.None));
            return;
        }
        work.Put(stop =>
        {
            var page = Markings(document, stop);
            if (!stop.IsCancellationRequested)
            {
                post(() => answer(page));
            }
        });
    }

    /// <inheritdoc/>
    public void Dispose() => work.Dispose();

    private IReadOnlyList<PageBlock> Markings(RecipeDocument document, CancellationToken stop)
    {
        if (predictor.Check(document).Piece is not { } piece)
        {
            return [new PageBlock.Paragraph("This recipe cannot be predicted.")];
        }
        var shelf = predictor.Shelf;
        bool isNamed = !piece.Recipe.CriteriaNames.IsEmpty;
        var names = isNamed ? piece.Recipe.CriteriaNames : shelf.Names(MaterialKind.Criterion);
        var guidance = MarkingGuide.Of(
            piece,
            predictor,
            [.. names.Select(n => shelf.Criterion(n).Material).OfType<Criterion>()],
            stop: stop
        );
        return isNamed ? MarkingPage.InFull(guidance, []) : MarkingPage.AsTable(guidance);
    }
}
