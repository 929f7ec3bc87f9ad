using GlowMix.Choosing;
using GlowMix.Console.Texts;
using GlowMix.Documents;

namespace GlowMix.Console.Plots;

/// <summary>The map of a search: where every target is met, and which one fails where only one does.</summary>
internal sealed class BalanceMapPlot(BalanceMap map, BalanceAnswer answer)
{
    private const int GutterColumns = 8;
    private const int MostRows = 20;
    private const char Met = 'O';
    private const char Taken = '@';
    private const char SeveralMissed = '.';

    /// <summary>Its lines, in ASCII letters but for the names.</summary>
    public IEnumerable<string> Draw(int columns)
    {
        int room = columns - GutterColumns - 1;
        int[] across = Shown(map.Across.Length, Math.Max(2, room / 2));
        int[] up = Shown(map.Up.Length, MostRows);
        var (takenAcross, takenUp) = TakenAt(across, up);
        var missedAlone = new SortedSet<int>();
        if (map.UpKeyPath is not null)
        {
            yield return map.UpKeyPath;
        }
        foreach (int row in up.Reverse())
        {
            string label = map.UpKeyPath is null ? "" : Digits.Significant(map.Up[row], 4);
            var cells = new char[across.Length * 2];
            Array.Fill(cells, ' ');
            for (int i = 0; i < across.Length; i++)
            {
                var missed = map.Missed[row][across[i]];
                cells[(2 * i) + 1] =
                    across[i] == takenAcross && row == takenUp ? Taken
                    : missed.IsEmpty ? Met
                    : missed.Length == 1 ? LetterOf(missed[0])
                    : SeveralMissed;
                if (missed.Length == 1)
                {
                    missedAlone.Add(missed[0]);
                }
            }
            yield return label.PadLeft(GutterColumns) + new string(cells);
        }
        yield return Labels(across);
        yield return map.AcrossKeyPath.PadLeft(
            Math.Max(map.AcrossKeyPath.Length, GutterColumns + (2 * across.Length))
        );
        yield return $"  {Met} every target met"
            + (takenAcross < 0 ? "" : $"   {Taken} the one to take, or next to it")
            + $"   {SeveralMissed} several missed";
        foreach (int target in missedAlone)
        {
            yield return $"  {LetterOf(target)} only missed: {BalanceWords.Target(answer.Targets[target])}";
        }
    }

    // After the twenty-sixth target letters begin anew; nobody reads a map of so many.
    private static char LetterOf(int target) => (char)('a' + (target % 26));

    private static int[] Shown(int count, int most) =>
        count <= most
            ? [.. Enumerable.Range(0, count)]
            : [.. Enumerable.Range(0, most).Select(i => (int)Math.Round(i * (count - 1.0) / (most - 1)))];

    private (int Across, int Up) TakenAt(int[] across, int[] up) =>
        answer.Recommended is { } best
            ? (
                Nearest(across, map.Across, ValueOf(best, map.AcrossKeyPath)),
                map.UpKeyPath is null ? 0 : Nearest(up, map.Up, ValueOf(best, map.UpKeyPath))
            )
            : (-1, -1);

    private static int Nearest(int[] shown, IReadOnlyList<double> values, double value) =>
        shown.MinBy(i => Math.Abs(values[i] - value));

    private static double ValueOf(BalanceDesign design, string keyPath) =>
        NumberText.TryRead(design.Choices.First(c => c.Key == keyPath).Value, out double value) ? value : 0;

    private string Labels(int[] across)
    {
        var line = new string(' ', GutterColumns + (2 * across.Length) + GutterColumns).ToCharArray();
        int free = 0;
        for (int i = 0; i < across.Length; i++)
        {
            string text = Digits.Significant(map.Across[across[i]], 4);
            int start = GutterColumns + (2 * i) + 1 - (text.Length / 2);
            if (start >= free)
            {
                text.CopyTo(line.AsSpan(start));
                free = start + text.Length + 3;
            }
        }
        return new string(line).TrimEnd();
    }
}
