using System.Collections.Immutable;
using GlowMix.Materials.Calibrations;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Readings.Fit;

/// <summary>How far the end of a fit may be off: the covariance of the numbers that were turned, and what follows from it.</summary>
internal sealed class FitSpread
{
    // In scaled numbers: what follows from several of them is straight over so little.
    private const double Step = 1e-4;

    private readonly FitProblem problem;
    private readonly double[] values;
    private readonly ImmutableArray<int> free;
    private readonly double[] errors;
    private readonly double[,] correlations;
    private readonly Matrix<double> covariance;

    /// <param name="problem">What was fitted.</param>
    /// <param name="values">All numbers at the end.</param>
    /// <param name="free">Those that were turned, by their places.</param>
    public FitSpread(FitProblem problem, double[] values, ImmutableArray<int> free)
    {
        (this.problem, this.values, this.free) = (problem, values, free);
        Widened = problem.WidenedBy(values, free.Length);
        // Columns of the free numbers alone, in their order.
        (errors, correlations, covariance) = free.IsEmpty
            ? ([], new double[0, 0], Matrix<double>.Build.Dense(1, 1))
            : ParameterChoice.Told(problem.Slopes(values, free), [.. Enumerable.Range(0, free.Length)]);
    }

    /// <summary>Factor on all standard errors, because the model does not follow the readings to their noise; 1 or more.</summary>
    public double Widened { get; }

    /// <summary>Standard error of a number that was turned, in its own unit.</summary>
    /// <param name="place">Its place among the free ones.</param>
    public double ErrorOf(int place)
    {
        var parameter = problem.Parameters[free[place]];
        return Widened * parameter.ErrorAt(values[free[place]], errors[place]);
    }

    /// <summary>Correlation of two numbers that were turned, by their places among the free ones.</summary>
    public double CorrelationOf(int first, int second) => correlations[first, second];

    /// <summary>Standard error of what follows from several fitted numbers: slopes, times their covariance, times slopes.</summary>
    public double ErrorOf(Func<double[], double> numberOf)
    {
        var slopes = SlopesOf(numberOf);
        return Widened * Math.Sqrt(Math.Max(0, slopes * (covariance * slopes)));
    }

    /// <summary>Correlations of what follows from fitted numbers, of each with each; none with one that the fit does not move.</summary>
    public ImmutableArray<CalibratedCorrelation> CorrelationsOf(
        IEnumerable<(string Key, Func<double[], double> NumberOf)> numbers
    )
    {
        var told = numbers
            .Select(n => (n.Key, Slopes: SlopesOf(n.NumberOf)))
            .Select(n => (n.Key, n.Slopes, Error: Math.Sqrt(n.Slopes * (covariance * n.Slopes))))
            .Where(n => n.Error > 0)
            .ToArray();
        return
        [
            .. told.SelectMany(
                (a, i) =>
                    told.Skip(i + 1)
                        .Select(b => new CalibratedCorrelation(
                            a.Key,
                            b.Key,
                            Math.Clamp(a.Slopes * (covariance * b.Slopes) / (a.Error * b.Error), -1, 1)
                        ))
            ),
        ];
    }

    private Vector<double> SlopesOf(Func<double[], double> numberOf)
    {
        double own = numberOf(values);
        return Vector<double>.Build.Dense(
            free.Length,
            i =>
            {
                var parameter = problem.Parameters[free[i]];
                double[] moved = [.. values];
                moved[free[i]] = parameter.Value(parameter.Scaled(values[free[i]]) + Step);
                return (numberOf(moved) - own) / Step;
            }
        );
    }
}
