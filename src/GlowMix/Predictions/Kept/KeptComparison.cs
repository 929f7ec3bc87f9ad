using System.Collections.Immutable;

namespace GlowMix.Predictions.Kept;

/// <summary>What has become of a prediction since its figures were kept.</summary>
public sealed record KeptComparison
{
    /// <summary>Names of the inputs that are not what they were, or that came or went.</summary>
    public required ImmutableArray<string> ChangedInputs { get; init; }

    /// <summary>Numbers that differ by more than a step, came or went.</summary>
    public required ImmutableArray<MovedFigure> Moved { get; init; }

    /// <summary>A target's state or the warnings are not what they were.</summary>
    public required bool HasOtherVerdicts { get; init; }

    /// <summary>Nothing is to be told: the file stands.</summary>
    public bool IsFresh => ChangedInputs.IsEmpty && Moved.IsEmpty && !HasOtherVerdicts;

    /// <summary>Compares the inputs alone, for which nothing need be predicted.</summary>
    public static ImmutableArray<string> ChangedInputsOf(
        KeptFigures kept,
        IReadOnlyList<PredictionInput> inputs
    )
    {
        ArgumentNullException.ThrowIfNull(kept);
        return
        [
            .. inputs.Where(i => !kept.Inputs.Contains(i)).Select(i => i.Name),
            .. kept.Inputs.Select(i => i.Name).Except(inputs.Select(i => i.Name)),
        ];
    }

    /// <summary>Compares what was kept with what is predicted now.</summary>
    public static KeptComparison Of(KeptFigures kept, KeptFigures now)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(now);
        return new()
        {
            ChangedInputs = ChangedInputsOf(kept, now.Inputs),
            Moved = [.. MovedOf(kept.Figures, now.Figures), .. MovedOf(kept.Bands, now.Bands)],
            HasOtherVerdicts =
                !kept.Targets.SequenceEqual(now.Targets) || !kept.Warnings.SequenceEqual(now.Warnings),
        };
    }

    private static IEnumerable<MovedFigure> MovedOf(
        ImmutableArray<KeptFigure> kept,
        ImmutableArray<KeptFigure> now
    )
    {
        var were = kept.ToDictionary(f => f.Name, f => f.Value);
        foreach (var (name, value) in now)
        {
            if (!were.Remove(name, out decimal was))
            {
                yield return new(name, null, value);
            }
            else if (Math.Abs(value - was) > StepOf(name, value, was))
            {
                yield return new(name, was, value);
            }
        }
        foreach (var (name, was) in were)
        {
            yield return new(name, was, null);
        }
    }

    private static decimal StepOf(string name, decimal value, decimal was)
    {
        int end =
            name.EndsWith(".low", StringComparison.Ordinal) ? 4
            : name.EndsWith(".high", StringComparison.Ordinal) ? 5
            : 0;
        string family = name[..^end];
        int bracket = family.IndexOf('[', StringComparison.Ordinal);
        var step = FigureSteps.Of(bracket < 0 ? family : family[..bracket]);
        return Math.Max(step.At(value), step.At(was));
    }
}
