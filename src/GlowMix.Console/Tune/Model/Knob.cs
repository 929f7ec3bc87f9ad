using System.Collections.Immutable;
using GlowMix.Documents;

namespace GlowMix.Console.Tune.Model;

/// <summary>One thing of a recipe that can be turned.</summary>
/// <param name="KeyPath">Its full path in the recipe.</param>
/// <param name="Group">What it belongs to, for a heading; empty for the piece as a whole.</param>
/// <param name="Label">What it is called, one or two words.</param>
/// <param name="Value">As it stands, or as it is taken where the recipe is silent.</param>
/// <param name="IsTaken">The recipe is silent.</param>
/// <param name="Unit">Behind the number; empty for a word.</param>
/// <param name="Allowed">The numbers allowed.</param>
/// <param name="Words">The words to choose from; empty for a number.</param>
internal sealed record Knob(
    string KeyPath,
    string Group,
    string Label,
    string Value,
    bool IsTaken,
    string Unit,
    NumberRange Allowed,
    ImmutableArray<string> Words
)
{
    /// <summary>Why it is shown only, and cannot be turned; empty where it can.</summary>
    public string WhyFixed { get; init; } = "";

    /// <summary>The pigment that a clear layer does not have.</summary>
    public bool IsClearLayer => Name == "pigment" && Value == KnobBoard.NoPigment;

    /// <summary>A number, not a word.</summary>
    public bool IsNumber => Words.IsEmpty;

    /// <summary>The last word of the path, as it stands in the file.</summary>
    public string Name { get; } = KeyPath[(KeyPath.LastIndexOf('.') + 1)..];

    /// <summary>What it is called with the layer it belongs to: 'glow loading'.</summary>
    public string FullLabel => Group.Length == 0 ? Label : $"{Group} {Label}";

    /// <summary>The value with its unit.</summary>
    public string Written => Unit.Length == 0 ? Value : $"{Value} {Unit}";

    /// <summary>The next value one key press away; null where there is none.</summary>
    public string? Next(StepSize size, bool up)
    {
        if (IsNumber)
        {
            return NumberText.TryRead(Value, out double number)
                ? NumberText.Write(KnobSteps.For(Name).Next(number, size, up))
                : null;
        }
        int at = Words.IndexOf(Value);
        int next = at < 0 ? (up ? 0 : Words.Length - 1) : at + (up ? 1 : -1);
        return next >= 0 && next < Words.Length ? Words[next] : null;
    }
}
