using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace GlowMix.Readings.Fit;

/// <summary>The least sum of squares within bounds, by the library's minimiser, in scaled numbers.</summary>
internal static class LevenbergMarquardt
{
    private const int MostIterations = 60;

    // Far below what any reading tells of a number.
    private const double Tolerance = 1e-5;

    // The minimiser turns bounds into arcs, which are flat at their ends: it must not start there.
    private const double OffTheEnds = 1e-3;

    /// <summary>Turns some of the numbers.</summary>
    /// <param name="problem">What was read.</param>
    /// <param name="start">All numbers.</param>
    /// <param name="free">Which of them to turn.</param>
    /// <returns>All numbers, and the steps taken.</returns>
    public static (double[] Values, int Iterations) Of(
        FitProblem problem,
        double[] start,
        IReadOnlyList<int> free
    )
    {
        if (free.Count == 0)
        {
            return (start, 0);
        }
        var parameters = free.Select(i => problem.Parameters[i]).ToArray();
        var lower = Vector<double>.Build.DenseOfEnumerable(parameters.Select(p => p.Scaled(p.Least)));
        var upper = Vector<double>.Build.DenseOfEnumerable(parameters.Select(p => p.Scaled(p.Most)));
        var guess = Vector<double>.Build.Dense(
            free.Count,
            i =>
            {
                double margin = OffTheEnds * (upper[i] - lower[i]);
                return Math.Clamp(parameters[i].Scaled(start[free[i]]), lower[i] + margin, upper[i] - margin);
            }
        );
        double[] Values(Vector<double> scaled)
        {
            double[] values = [.. start];
            for (int i = 0; i < free.Count; i++)
            {
                values[free[i]] = parameters[i].Value(scaled[i]);
            }
            return values;
        }
        var model = ObjectiveFunction.NonlinearModel(
            (Vector<double> p, Vector<double> _) => problem.Predicted(Values(p)),
            (Vector<double> p, Vector<double> _) => problem.Slopes(Values(p), free),
            problem.Read,
            problem.Read
        );
        var result = new LevenbergMarquardtMinimizer(
            gradientTolerance: Tolerance,
            stepTolerance: Tolerance,
            functionTolerance: Tolerance * Tolerance,
            maximumIterations: MostIterations
        ).FindMinimum(model, guess, lower, upper);
        return (Values(result.MinimizingPoint), result.Iterations);
    }
}
