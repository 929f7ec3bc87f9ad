using GlowMix.Documents;
using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>
/// Works out figures beside the text UI: likely ones at once, bands when the hand rests. A key that is held down leaves no queue, and
/// an answer to an older request is dropped, not told. While the hand holds still it looks a step ahead: a new grain takes many times as
/// long as a new loading.
/// </summary>
internal sealed class ForetellingDesk : IDesk, IDisposable
{
    // Bands take all cores.
    private static readonly TimeSpan handAtRest = TimeSpan.FromMilliseconds(250);

    // Likely figures of the present state come first.
    private static readonly TimeSpan handStill = TimeSpan.FromMilliseconds(60);

    private readonly IForeteller foreteller;
    private readonly Action<Outlook> answer;
    private readonly LatestWork likely = new("likely figures");
    private readonly LatestWork ahead = new("a step ahead", handStill, ThreadPriority.BelowNormal);
    private readonly LatestWork bands = new("bands", handAtRest, ThreadPriority.BelowNormal);

    /// <param name="foreteller">The model.</param>
    /// <param name="answer">Told each answer, from a thread of the desk's own.</param>
    public ForetellingDesk(IForeteller foreteller, Action<Outlook> answer) =>
        (this.foreteller, this.answer) = (foreteller, answer);

    /// <inheritdoc/>
    public void Ask(RecipeDocument document, params IEnumerable<RecipeDocument> also)
    {
        RecipeDocument[] all = [document, .. also];
        likely.Put(stop =>
        {
            foreach (var each in all)
            {
                stop.ThrowIfCancellationRequested();
                Tell(Guarded(each, () => foreteller.Likely(each)), stop);
            }
        });
        bands.Put(stop =>
        {
            // The next key counts more than the bands of this state.
            while (!ahead.IsIdle && !stop.WaitHandle.WaitOne(handStill)) { }
            stop.ThrowIfCancellationRequested();
            Tell(Guarded(document, () => foreteller.Rough(document)), stop);
            stop.ThrowIfCancellationRequested();
            Tell(Guarded(document, () => foreteller.Banded(document, stop)), stop);
        });
    }

    /// <inheritdoc/>
    public void LookAhead(IEnumerable<RecipeDocument> documents) =>
        ahead.Put(stop =>
        {
            foreach (var each in documents)
            {
                stop.ThrowIfCancellationRequested();
                Tell(Guarded(each, () => foreteller.Likely(each)), stop);
            }
        });

    /// <summary>Ends the work; what is under way is finished and not told.</summary>
    public void Dispose()
    {
        likely.Dispose();
        ahead.Dispose();
        bands.Dispose();
    }

    private void Tell(Outlook outlook, CancellationToken stop)
    {
        if (!stop.IsCancellationRequested)
        {
            answer(outlook);
        }
    }

    // A fault of the model is told like a recipe's; it does not take the screen and the turns with it.
    private static Outlook Guarded(RecipeDocument document, Func<Outlook> work)
    {
        try
        {
            return work();
        }
#pragma warning disable CA1031 // The last guard of a thread.
        catch (Exception e) when (e is not OperationCanceledException)
#pragma warning restore CA1031
        {
            return new(
                document.Text,
                null,
                [
                    new Problem(
                        document.Name,
                        null,
                        $"an error in the program: {e.GetType().Name}: {e.Message}"
                    ),
                ],
                HasBands: false
            );
        }
    }
}
