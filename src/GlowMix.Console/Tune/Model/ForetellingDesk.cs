using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>
/// Works out figures beside the text UI. One thread for likely figures and one for bands, each with room for a single request: the
/// latest. So a key that is held down never leaves a queue behind, and an answer to an older request is dropped, not told.
/// </summary>
internal sealed class ForetellingDesk : IDesk, IDisposable
{
    // Bands take all cores; they wait until the hand rests.
    private static readonly TimeSpan HandAtRest = TimeSpan.FromMilliseconds(250);

    private readonly IForeteller foreteller;
    private readonly Action<Outlook> answer;
    private readonly Lock gate = new();
    private readonly AutoResetEvent asked = new(false);
    private readonly AutoResetEvent settled = new(false);
    private readonly CancellationTokenSource end = new();
    private CancellationTokenSource bands = new();
    private RecipeDocument? latest;
    private RecipeDocument[] beside = [];
    private RecipeDocument? toBand;
    private long number;

    /// <param name="foreteller">The model.</param>
    /// <param name="answer">Told each answer, from a thread of the desk's own.</param>
    public ForetellingDesk(IForeteller foreteller, Action<Outlook> answer)
    {
        (this.foreteller, this.answer) = (foreteller, answer);
        Start("likely figures", WorkOutLikely);
        Start("bands", WorkOutBands);
    }

    /// <inheritdoc/>
    public void Ask(RecipeDocument document, params IEnumerable<RecipeDocument> also)
    {
        lock (gate)
        {
            number++;
            latest = document;
            beside = [.. also];
            bands.Cancel();
            bands = new();
            toBand = document;
        }
        asked.Set();
        settled.Set();
    }

    /// <summary>Ends the work; what is under way is finished and not told.</summary>
    public void Dispose()
    {
        end.Cancel();
        lock (gate)
        {
            bands.Cancel();
        }
        asked.Set();
        settled.Set();
    }

    private static void Start(string name, ThreadStart work) =>
        new Thread(work) { IsBackground = true, Name = name }.Start();

    private void WorkOutLikely()
    {
        while (!end.IsCancellationRequested)
        {
            asked.WaitOne();
            RecipeDocument? document;
            RecipeDocument[] also;
            long mine;
            lock (gate)
            {
                (document, also, mine) = (latest, beside, number);
                latest = null;
            }
            foreach (var each in document is null ? [] : also.Prepend(document))
            {
                if (end.IsCancellationRequested || Interlocked.Read(ref number) != mine)
                {
                    break;
                }
                Tell(foreteller.Likely(each), mine);
            }
        }
    }

    private void WorkOutBands()
    {
        while (!end.IsCancellationRequested)
        {
            settled.WaitOne();
            // Each further request begins the wait anew.
            while (settled.WaitOne(HandAtRest) && !end.IsCancellationRequested) { }
            RecipeDocument? document;
            CancellationToken stop;
            long mine;
            lock (gate)
            {
                (document, stop, mine) = (toBand, bands.Token, number);
                toBand = null;
            }
            if (document is null || end.IsCancellationRequested)
            {
                continue;
            }
            try
            {
                Tell(foreteller.Banded(document, stop), mine);
            }
            catch (OperationCanceledException)
            {
                // Something newer was asked for.
            }
        }
    }

    private void Tell(Outlook outlook, long mine)
    {
        if (!end.IsCancellationRequested && Interlocked.Read(ref number) == mine)
        {
            answer(outlook);
        }
    }
}
