using System.Collections.Immutable;
using GlowMix.Choosing.Draws;

namespace GlowMix.Choosing.Compare;

/// <summary>
/// Draws of two pieces with common random numbers: a number in doubt that both have, such as the absorption of one pigment, turns
/// out alike for both in each draw. (Common practice in simulation; Law, Simulation Modeling and Analysis, chapter on variance
/// reduction, cited from memory.)
/// </summary>
internal static class PairedDraws
{
    /// <summary>Draws both.</summary>
    /// <param name="before">The first piece.</param>
    /// <param name="after">The second.</param>
    /// <param name="count">How many draws of each.</param>
    /// <param name="cores">How many cores to use, null for all; the draws are the same.</param>
    /// <param name="done">Told how many draws of both are done, from any thread; may be null.</param>
    /// <param name="known">The first piece as drawn before, by as many draws; null to draw it.</param>
    /// <param name="stop">Ends the run.</param>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public static (DrawTable Before, DrawTable After) Of(
        DrawBench before,
        DrawBench after,
        int count,
        int? cores = null,
        Action<int>? done = null,
        DrawTable? known = null,
        CancellationToken stop = default
    )
    {
        var first = NamesOf(before.Numbers);
        var second = NamesOf(after.Numbers);
        // The first's numbers stand first, so that it is drawn as it would be by itself.
        string[] all = [.. first.Union(second, StringComparer.Ordinal)];
        var points = DrawTable.Points(Math.Max(1, all.Length), count);
        var tableBefore = known ?? DrawTable.At(before, PointsOf(first), cores, done, stop);
        int doneBefore = tableBefore.IsEmpty ? 0 : count;
        var tableAfter = DrawTable.At(
            after,
            PointsOf(second),
            cores,
            done is null ? null : n => done(doneBefore + n),
            stop
        );
        return (tableBefore, tableAfter);

        double[][] PointsOf(IReadOnlyList<string> names)
        {
            int[] places = [.. names.Select(name => Array.IndexOf(all, name))];
            return [.. points.Select(point => places.Select(place => point[place]).ToArray())];
        }
    }

    // A number is known by its cause and its place among that cause's.
    private static string[] NamesOf(ImmutableArray<DoubtfulNumber> numbers)
    {
        var counts = new Dictionary<string, int>();
        return
        [
            .. numbers.Select(number =>
            {
                int place = counts[number.Cause.Key] = counts.GetValueOrDefault(number.Cause.Key) + 1;
                return $"{number.Cause.Key}#{place}";
            }),
        ];
    }
}
