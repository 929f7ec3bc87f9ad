namespace GlowMix.Console.Tune.Model;

/// <summary>Something that must be decided before going on.</summary>
/// <param name="Text">What is asked, in a sentence.</param>
/// <param name="Answers">The keys that answer, each with what it means and what it does; Esc always leaves things as they are.</param>
internal sealed record Question(string Text, IReadOnlyList<(char Key, string Meaning, Action Do)> Answers)
{
    /// <summary>What stands at the foot: the question and its keys.</summary>
    public string Line =>
        $"{Text}  {string.Join(", ", Answers.Select(a => $"{a.Key} {a.Meaning}"))}, Esc leave it as it is";
}
