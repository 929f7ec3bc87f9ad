using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace GlowMix.Readings.Fit;

/// <summary>Which numbers readings tell, and which they cannot tell apart.</summary>
/// <remarks>
/// Standard errors come from the singular values of the slopes, in units of what each number is known to without readings: one that
/// would come out above one half is hardly told better by the readings than by the material's file. The worst is held and the rest looked at again,
/// until all that is left is told.
/// </remarks>
internal sealed class ParameterChoice
{
    // Smaller against the largest, a singular value is rounding.
    private const double RoundingShare = 1e-9;

    // A number counts as told where the readings at least halve its doubt.
    private const double ToldTo = 0.5;

    // Where two are told equally badly, the one that comes later is held.
    private const double SameShare = 0.5;

    // A part this large of the direction that the readings do not see.
    private const double PartnerShare = 0.3;

    private ParameterChoice(ImmutableArray<int> free, ImmutableArray<HeldParameter> held) =>
        (Free, Held) = (free, held);

    /// <summary>Columns that are told, in order.</summary>
    public ImmutableArray<int> Free { get; }

    /// <summary>Columns that are not.</summary>
    public ImmutableArray<HeldParameter> Held { get; }

    /// <summary>Looks at slopes, a column a number.</summary>
    /// <param name="slopes">Of everything read, in scaled numbers.</param>
    /// <param name="among">Columns that may be free; null for all.</param>
    /// <param name="always">Columns that are not held, however badly told.</param>
    public static ParameterChoice Of(
        Matrix<double> slopes,
        IEnumerable<int>? among = null,
        IReadOnlyCollection<int>? always = null
    )
    {
        var free = (among ?? Enumerable.Range(0, slopes.ColumnCount)).ToList();
        var held = new List<HeldParameter>();
        while (free.Count > 0)
        {
            var directions = Directions.Of(slopes, free);
            double[] errors =
            [
                .. directions.Errors().Select((e, i) => always?.Contains(free[i]) == true ? 0 : e),
            ];
            double worst = errors.Max();
            if (worst < ToldTo)
            {
                break;
            }
            int drop = Enumerable.Range(0, errors.Length).Last(i => errors[i] >= SameShare * worst);
            double alone = 1 / slopes.Column(free[drop]).L2Norm();
            // Told well enough by itself: then it is another that stands in its way.
            int[] partners =
                alone < ToldTo
                    ?
                    [
                        .. directions
                            .PartnersOf(drop, PartnerShare)
                            .Select(i => free[i])
                            .Where(i => always?.Contains(i) != true),
                    ]
                    : [];
            held.Add(new(free[drop], partners));
            free.RemoveAt(drop);
        }
        return new([.. free], [.. held]);
    }

    /// <summary>This choice after a second look at what it left free.</summary>
    public ParameterChoice With(ParameterChoice second) => new(second.Free, [.. Held, .. second.Held]);

    /// <summary>Standard errors and correlations of some columns, in scaled numbers.</summary>
    public static (double[] Errors, double[,] Correlations, Matrix<double> Covariance) Told(
        Matrix<double> slopes,
        IReadOnlyList<int> columns
    )
    {
        var directions = Directions.Of(slopes, columns);
        var covariance = directions.Covariance();
        double[] errors = directions.Errors();
        var correlations = new double[columns.Count, columns.Count];
        for (int i = 0; i < columns.Count; i++)
        {
            for (int j = 0; j < columns.Count; j++)
            {
                correlations[i, j] = covariance[i, j] / (errors[i] * errors[j]);
            }
        }
        return (errors, correlations, covariance);
    }

    /// <summary>The singular values of slopes and their directions.</summary>
    private sealed class Directions(Vector<double> values, Matrix<double> rows)
    {
        public static Directions Of(Matrix<double> slopes, IReadOnlyList<int> columns)
        {
            var part = Matrix<double>.Build.DenseOfColumnVectors(columns.Select(slopes.Column));
            var svd = part.Svd(computeVectors: true);
            // Fewer numbers read than turned: the directions left over have no singular value.
            var values = Vector<double>.Build.Dense(columns.Count, i => i < svd.S.Count ? svd.S[i] : 0);
            double least = RoundingShare * Math.Max(values.AbsoluteMaximum(), 1e-300);
            return new(values.Map(v => Math.Max(v, least)), svd.VT);
        }

        public double[] Errors() =>
            [
                .. Enumerable
                    .Range(0, values.Count)
                    .Select(i =>
                        Math.Sqrt(
                            Enumerable.Range(0, values.Count).Sum(k => Math.Pow(rows[k, i] / values[k], 2))
                        )
                    ),
            ];

        public Matrix<double> Covariance()
        {
            var scaled = Matrix<double>.Build.Dense(
                values.Count,
                values.Count,
                (k, i) => rows[k, i] / values[k]
            );
            return scaled.TransposeThisAndMultiply(scaled);
        }

        /// <summary>Others in the direction that a column's error comes from most.</summary>
        public IEnumerable<int> PartnersOf(int column, double share)
        {
            int direction = Enumerable
                .Range(0, values.Count)
                .MaxBy(k => Math.Abs(rows[k, column] / values[k]));
            return Enumerable
                .Range(0, values.Count)
                .Where(i =>
                    i != column && Math.Abs(rows[direction, i]) > share * Math.Abs(rows[direction, column])
                );
        }
    }
}
