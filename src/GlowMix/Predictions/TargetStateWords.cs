namespace GlowMix.Predictions;

/// <summary>The words of a target's state in files and JSON.</summary>
public static class TargetStateWords
{
    /// <summary>All of them, in the order of the states.</summary>
    public static IReadOnlyList<string> All { get; } = ["met", "missed", "too_close", "not_judged"];

    /// <summary>The word of a state.</summary>
    public static string Word(this TargetState state) => All[(int)state];
}
