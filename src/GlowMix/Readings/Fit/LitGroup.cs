using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Readings.Fit;

/// <summary>
/// All lit readings together: they share the noise of the one bare reading that they are divided by, and each has a level of its
/// own that is known to some percent, or not at all.
/// </summary>
/// <remarks>
/// At one wavelength the covariance of the readings is D + s² 1 1ᵀ with their own noise D and the bare reading's s; its Cholesky
/// factor makes them independent. A level adds the same to all logarithms of a reading. Taking out the levels that fit best before
/// read and predicted are compared leaves the same sum of squares as fitting them too (variable projection, Golub &amp; Pereyra
/// 1973); what a known level lacks to its value is one number more.
/// </remarks>
internal sealed class LitGroup
{
    private readonly ImmutableArray<LitBlock> blocks;
    private readonly int[] starts;
    private readonly (int[] Rows, Matrix<double> Whitening)[] places;
    private readonly Matrix<double> levels;
    private readonly Matrix<double> levelsOf;
    private readonly double? levelDeviation;

    /// <param name="blocks">At least one.</param>
    /// <param name="bareDeviations">Relative noise of the bare reading at each sample.</param>
    /// <param name="levelDeviation">How well levels compare, relative; null: not at all.</param>
    public LitGroup(ImmutableArray<LitBlock> blocks, double[] bareDeviations, double? levelDeviation)
    {
        (this.blocks, this.levelDeviation) = (blocks, levelDeviation);
        starts = [.. blocks.Select((_, b) => blocks.Take(b).Sum(x => x.Samples.Length))];
        places =
        [
            .. blocks
                .SelectMany((block, b) => block.Samples.Select((sample, i) => (sample, b, i)))
                .GroupBy(p => p.sample)
                .Select(at => PlaceOf([.. at.Select(p => (p.b, p.i))], bareDeviations[at.Key])),
        ];
        int count = blocks.Sum(b => b.Samples.Length);
        levels = Matrix<double>.Build.Dense(count, blocks.Length);
        for (int b = 0; b < blocks.Length; b++)
        {
            var one = Vector<double>.Build.Dense(count);
            for (int i = 0; i < blocks[b].Samples.Length; i++)
            {
                one[starts[b] + i] = 1;
            }
            levels.SetColumn(b, Independent(one));
        }
        double known = levelDeviation is double d ? 1 / (d * d) : 0;
        levelsOf = (
            levels.TransposeThisAndMultiply(levels)
            + Matrix<double>.Build.DenseDiagonal(blocks.Length, blocks.Length, known)
        ).Solve(levels.Transpose());
    }

    /// <summary>Logarithms of all readings, block after block, in units of noise and independent of each other.</summary>
    public IEnumerable<double> Whitened(Func<LitBlock, double[]> logsOf)
    {
        var independent = Independent(Vector<double>.Build.DenseOfEnumerable(blocks.SelectMany(logsOf)));
        var own = levelsOf * independent;
        var left = independent - (levels * own);
        return levelDeviation is double d ? left.Concat(own / d) : left;
    }

    private Vector<double> Independent(Vector<double> logs)
    {
        var result = Vector<double>.Build.Dense(logs.Count);
        foreach (var (rows, whitening) in places)
        {
            for (int r = 0; r < rows.Length; r++)
            {
                double sum = 0;
                for (int c = 0; c <= r; c++)
                {
                    sum += whitening[r, c] * logs[rows[c]];
                }
                result[rows[r]] = sum;
            }
        }
        return result;
    }

    private (int[] Rows, Matrix<double> Whitening) PlaceOf((int Block, int At)[] read, double shared)
    {
        var covariance = Matrix<double>.Build.Dense(
            read.Length,
            read.Length,
            (i, j) =>
                (shared * shared)
                + (i == j ? Math.Pow(blocks[read[i].Block].OwnDeviations[read[i].At], 2) : 0)
        );
        return ([.. read.Select(p => starts[p.Block] + p.At)], covariance.Cholesky().Factor.Inverse());
    }
}
