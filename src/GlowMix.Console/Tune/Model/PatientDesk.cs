using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>Works figures out while one waits: for lines, where nothing else goes on meanwhile.</summary>
/// <param name="foreteller">The model.</param>
/// <param name="stop">Ends the work.</param>
internal sealed class PatientDesk(IForeteller foreteller, CancellationToken stop) : IDesk
{
    /// <summary>Told each answer; while null, nothing is worked out.</summary>
    public Action<Outlook>? Answer { get; set; }

    /// <inheritdoc/>
    public void Ask(RecipeDocument document, params IEnumerable<RecipeDocument> also)
    {
        if (Answer is null)
        {
            return;
        }
        foreach (var each in also.ToArray())
        {
            Answer(foreteller.Likely(each));
        }
        Answer(foreteller.Banded(document, stop));
    }
}
