using System.Collections.Immutable;
using System.Globalization;
using GlowMix.Documents;

namespace GlowMix.Choosing.Search;

/// <summary>
/// The numbers that one key may take: a fine row of round numbers between the ends of its range, of which the search first tries
/// every tenth.
/// </summary>
internal sealed class SearchAxis
{
    /// <summary>Fine steps in a coarse one.</summary>
    public const int Stride = 10;

    // Nearer to an end than this part of a fine step is no other design.
    private const double SamePart = 1e-3;

    private SearchAxis(string keyPath, ImmutableArray<double> values, ImmutableArray<int> coarse) =>
        (KeyPath, Values, CoarseIndices) = (keyPath, values, coarse);

    /// <summary>The full key path.</summary>
    public string KeyPath { get; }

    /// <summary>Rising; the first and the last are the ends as given, those between are round.</summary>
    public ImmutableArray<double> Values { get; }

    /// <summary>Indices of the coarse row: both ends, and the rounder numbers between.</summary>
    public ImmutableArray<int> CoarseIndices { get; }

    /// <summary>A range cut into coarse steps of a round number: 1, 2 or 5 times a power of ten.</summary>
    /// <param name="keyPath">The full key path.</param>
    /// <param name="from">Lower end.</param>
    /// <param name="to">Upper end, above the lower.</param>
    /// <param name="coarseSteps">About how many coarse steps, 1 or more.</param>
    public static SearchAxis Between(string keyPath, double from, double to, int coarseSteps)
    {
        double coarse = RoundNear((to - from) / coarseSteps);
        double fine = coarse / Stride;
        var values = ImmutableArray.CreateBuilder<double>();
        var indices = ImmutableArray.CreateBuilder<int>();
        values.Add(from);
        indices.Add(0);
        for (double i = Math.Floor(from / fine) + 1; i * fine < to; i++)
        {
            double value = InShort(i * fine, fine);
            if (value - from > SamePart * fine && to - value > SamePart * fine)
            {
                if (i % Stride == 0)
                {
                    indices.Add(values.Count);
                }
                values.Add(value);
            }
        }
        indices.Add(values.Count);
        values.Add(to);
        return new(keyPath, values.ToImmutable(), indices.ToImmutable());
    }

    /// <summary>The same fine row with so much fewer coarse values: every second, third …, and both ends.</summary>
    public SearchAxis WithEvery(int coarseSteps) =>
        new(
            KeyPath,
            Values,
            [
                .. CoarseIndices.Where(
                    (_, i) => i == 0 || (i % coarseSteps == 0 && i + coarseSteps < CoarseIndices.Length)
                ),
                CoarseIndices[^1],
            ]
        );

    private static double RoundNear(double step)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(step)));
        return power
            * (step / power) switch
            {
                < 1.5 => 1,
                < 3.5 => 2,
                < 7.5 => 5,
                _ => 10,
            };
    }

    // 3 × 0.1 is 0.30000000000000004, and would be written so into a recipe.
    private static double InShort(double value, double step)
    {
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 15);
        return NumberText.TryRead(
            value.ToString($"F{decimals}", CultureInfo.InvariantCulture),
            out double rounded
        )
            ? rounded
            : value;
    }
}
