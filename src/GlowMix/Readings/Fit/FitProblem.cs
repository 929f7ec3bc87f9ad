using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Readings.Fit;

/// <summary>All readings of a fit in units of their noise, against all numbers that it may turn.</summary>
/// <param name="parameters">What may be turned.</param>
/// <param name="lit">Lit readings; null without.</param>
/// <param name="blocks">All readings, each by itself.</param>
/// <param name="newDraft">The materials as they stand.</param>
internal sealed class FitProblem(
    ImmutableArray<FitParameter> parameters,
    LitGroup? lit,
    ImmutableArray<FitBlock> blocks,
    Func<FitDraft> newDraft
)
{
    // In units of what a number is known to without readings: far above rounding, far below where curvature shows.
    private const double Step = 1e-3;

    public ImmutableArray<FitParameter> Parameters { get; } = parameters;

    public ImmutableArray<FitBlock> Blocks { get; } = blocks;

    /// <summary>Those that are turned but not told. Each is one number more that is read: that it is at its start.</summary>
    public ImmutableArray<int> Aside { get; } =
    [.. Enumerable.Range(0, parameters.Length).Where(i => parameters[i].IsAside)];

    /// <summary>Everything read.</summary>
    public Vector<double> Read { get; } =
        WhitenedBy(lit, blocks, b => b.LogRead, [.. parameters.Where(p => p.IsAside).Select(_ => 0.0)]);

    /// <summary>The draft of some numbers.</summary>
    public FitDraft DraftOf(IReadOnlyList<double> values)
    {
        var draft = newDraft();
        for (int i = 0; i < Parameters.Length; i++)
        {
            Parameters[i].Put(draft, values[i]);
        }
        return draft;
    }

    /// <summary>What the model has for them.</summary>
    public Vector<double> Predicted(IReadOnlyList<double> values)
    {
        var draft = DraftOf(values);
        return WhitenedBy(
            lit,
            Blocks,
            b => b.LogPredicted(draft),
            [.. Aside.Select(i => Parameters[i].Scaled(values[i]))]
        );
    }

    /// <summary>Numbers read, less those spent on levels.</summary>
    public double Count => Blocks.Sum(b => b.Freedom) + Aside.Length;

    /// <summary>How many times further off the model is than noise makes it; 1 where it is not.</summary>
    /// <param name="values">All numbers.</param>
    /// <param name="freeCount">How many of them were turned.</param>
    public double WidenedBy(IReadOnlyList<double> values, int freeCount)
    {
        double freedom = Count - freeCount;
        return freedom > 0 ? Math.Max(1, (Read - Predicted(values)).L2Norm() / Math.Sqrt(freedom)) : 1;
    }

    /// <summary>Slopes of everything predicted, a column for each of some parameters in its scaled number.</summary>
    /// <param name="values">All numbers.</param>
    /// <param name="columns">Which parameters.</param>
    public Matrix<double> Slopes(IReadOnlyList<double> values, IReadOnlyList<int> columns)
    {
        var middle = Predicted(values);
        var slopes = Matrix<double>.Build.Dense(middle.Count, columns.Count);
        for (int c = 0; c < columns.Count; c++)
        {
            var parameter = Parameters[columns[c]];
            double scaled = parameter.Scaled(values[columns[c]]);
            // Away from the nearer end.
            double step = values[columns[c]] > (parameter.Least + parameter.Most) / 2 ? -Step : Step;
            double[] moved = [.. values];
            moved[columns[c]] = parameter.Value(scaled + step);
            slopes.SetColumn(c, (Predicted(moved) - middle) / step);
        }
        return slopes;
    }

    private static Vector<double> WhitenedBy(
        LitGroup? lit,
        ImmutableArray<FitBlock> blocks,
        Func<FitBlock, double[]> logsOf,
        double[] aside
    ) =>
        Vector<double>.Build.DenseOfEnumerable([
            .. lit?.Whitened(logsOf) ?? [],
            .. blocks.OfType<GlowBlock>().SelectMany(b => b.Whitened(logsOf(b))),
            .. aside,
        ]);
}
