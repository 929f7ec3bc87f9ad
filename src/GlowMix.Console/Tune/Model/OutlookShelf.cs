using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>Outlooks by the recipe's text, so that going back and forth shows them at once.</summary>
internal sealed class OutlookShelf
{
    private const int Most = 200;

    private readonly Dictionary<string, Outlook> kept = [];
    private readonly Queue<string> order = new();

    /// <summary>What is known of a recipe; null if nothing yet.</summary>
    public Outlook? Find(RecipeDocument? document) =>
        document is null ? null : kept.GetValueOrDefault(document.Text);

    /// <summary>Keeps an outlook; one is never replaced by one that is less complete.</summary>
    public void Keep(Outlook outlook)
    {
        if (kept.TryGetValue(outlook.Text, out var old))
        {
            if (outlook.Completeness >= old.Completeness)
            {
                kept[outlook.Text] = outlook;
            }
            return;
        }
        kept[outlook.Text] = outlook;
        order.Enqueue(outlook.Text);
        while (order.Count > Most)
        {
            kept.Remove(order.Dequeue());
        }
    }

    /// <summary>Forgets all: materials on disk may have changed.</summary>
    public void Clear()
    {
        kept.Clear();
        order.Clear();
    }
}
