using GlowMix.Documents;
using GlowMix.Materials;

namespace GlowMix.Console.Starts;

/// <summary>Makes the text of a new file from what a beginner or a buyer has.</summary>
internal abstract class Starter
{
    /// <summary>'recipe', 'pigment' …</summary>
    public abstract string Word { get; }

    /// <summary>For the help.</summary>
    public abstract string Description { get; }

    /// <summary>The kind of material; null for a recipe.</summary>
    public virtual MaterialKind? Kind => null;

    /// <summary>What can be told, in the order of the questions.</summary>
    public abstract IReadOnlyList<StartField> Fields { get; }

    /// <summary>Said when none of several texts would do.</summary>
    public virtual string WhatWasTried => "";

    /// <summary>What is missing or does not go together, or null.</summary>
    public virtual string? ProblemOf(StartAnswers answers) => null;

    /// <summary>The text; where one is refused for want of a deeper sample the next is tried.</summary>
    /// <param name="answers">What was told.</param>
    /// <param name="shelf">The shelf it leans on.</param>
    /// <param name="open">Opens a file that an answer names.</param>
    public abstract StartTexts Make(StartAnswers answers, Shelf shelf, Func<string, FileText> open);
}
