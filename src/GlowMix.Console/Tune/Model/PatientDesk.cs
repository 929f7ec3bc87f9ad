using GlowMix.Recipes;

namespace GlowMix.Console.Tune.Model;

/// <summary>Works likely figures out while one waits: for lines, where nothing else goes on meanwhile.</summary>
/// <param name="foreteller">The model.</param>
internal sealed class PatientDesk(IForeteller foreteller) : IDesk
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
        foreach (var each in also.Append(document).ToArray())
        {
            Answer(foreteller.Likely(each));
        }
    }

    /// <summary>Nothing: between lines nobody waits.</summary>
    public void LookAhead(IEnumerable<RecipeDocument> documents) { }
}
