using GlowMix.Console.Tune.Model;
using GlowMix.Recipes;

namespace GlowMix.Console.Tests.Tune.Model;

public class ForetellingDeskTests
{
    [Fact]
    public void A_held_key_leaves_no_queue_and_no_older_answer_is_told()
    {
        using var begun = new SemaphoreSlim(0);
        using var goOn = new SemaphoreSlim(0);
        using var told = new SemaphoreSlim(0);
        var answers = new List<string>();
        var foreteller = new SlowForeteller(begun, goOn);
        using var desk = new ForetellingDesk(
            foreteller,
            outlook =>
            {
                lock (answers)
                {
                    answers.Add(outlook.Text);
                }
                told.Release();
            }
        );
        desk.Ask(Document("first"));
        begun.Wait(TestContext.Current.CancellationToken);
        for (int i = 0; i < 100; i++)
        {
            desk.Ask(Document($"turn {i}"));
        }
        goOn.Release();
        begun.Wait(TestContext.Current.CancellationToken);
        goOn.Release();
        told.Wait(TestContext.Current.CancellationToken);
        Assert.Equal(2, foreteller.LikelyCount);
        lock (answers)
        {
            Assert.Equal(["turn 99"], answers);
        }
    }

    [Fact]
    public void While_the_hand_holds_still_the_next_step_is_worked_out()
    {
        using var told = new SemaphoreSlim(0);
        var answers = new List<string>();
        using var desk = new ForetellingDesk(
            new QuickForeteller(),
            outlook =>
            {
                lock (answers)
                {
                    answers.Add(outlook.Text);
                }
                told.Release();
            }
        );
        desk.LookAhead([Document("an older step")]);
        desk.LookAhead([Document("one up"), Document("one down")]);
        told.Wait(TestContext.Current.CancellationToken);
        told.Wait(TestContext.Current.CancellationToken);
        lock (answers)
        {
            Assert.Equal(["one up", "one down"], answers.TakeLast(2));
        }
    }

    private static RecipeDocument Document(string text) => RecipeDocument.Read(text, "r.yaml");

    private sealed class QuickForeteller : IForeteller
    {
        public Outlook Likely(RecipeDocument document) => new(document.Text, null, [], false);

        public Outlook Rough(RecipeDocument document) => throw new OperationCanceledException();

        public Outlook Banded(RecipeDocument document, CancellationToken stop) =>
            throw new OperationCanceledException();
    }

    private sealed class SlowForeteller(SemaphoreSlim begun, SemaphoreSlim goOn) : IForeteller
    {
        public int LikelyCount { get; private set; }

        public Outlook Likely(RecipeDocument document)
        {
            LikelyCount++;
            begun.Release();
            goOn.Wait();
            return new(document.Text, null, [], false);
        }

        public Outlook Rough(RecipeDocument document) => throw new OperationCanceledException();

        public Outlook Banded(RecipeDocument document, CancellationToken stop) =>
            throw new OperationCanceledException();
    }
}
