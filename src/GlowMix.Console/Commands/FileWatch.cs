namespace GlowMix.Console.Commands;

/// <summary>
/// Waits for files to be saved. It looks at them from time to time instead of asking the system to be told: that also works
/// for an editor that writes another file and gives it the old name, for a file that goes and comes back, and on any disk.
/// </summary>
internal sealed class FileWatch(Surroundings surroundings)
{
    private const int MillisecondsBetweenLooks = 150;

    // An editor writes in several goes; one that never rests is believed all the same.
    private const int MostLooksForRest = 20;

    private readonly Dictionary<string, Stamp> seen = [];

    private readonly record struct Stamp(bool IsThere, DateTime WrittenUtc, long Length);

    /// <summary>Takes files as they are now; those that are watched already stay as they were.</summary>
    public void Add(IEnumerable<string> files)
    {
        foreach (string file in files)
        {
            seen.TryAdd(file, StampOf(file));
        }
    }

    /// <summary>Waits until a file is another than it was, and has then been left alone for a moment.</summary>
    /// <returns>The files that changed; empty if it was stopped.</returns>
    public IReadOnlyList<string> Wait()
    {
        while (!surroundings.Stop.WaitHandle.WaitOne(MillisecondsBetweenLooks))
        {
            if (Changed().Count == 0)
            {
                continue;
            }
            var now = Look();
            for (int i = 0; i < MostLooksForRest; i++)
            {
                if (surroundings.Stop.WaitHandle.WaitOne(MillisecondsBetweenLooks))
                {
                    return [];
                }
                var next = Look();
                bool isAtRest = next.All(n => now[n.Key] == n.Value);
                now = next;
                if (isAtRest)
                {
                    break;
                }
            }
            // What was written and taken back is no change.
            var changed = Changed();
            foreach (var (file, stamp) in now)
            {
                seen[file] = stamp;
            }
            if (changed.Count > 0)
            {
                return changed;
            }
        }
        return [];
    }

    private List<string> Changed() => [.. seen.Where(s => StampOf(s.Key) != s.Value).Select(s => s.Key)];

    private Dictionary<string, Stamp> Look() => seen.Keys.ToDictionary(f => f, StampOf);

    private Stamp StampOf(string file)
    {
        try
        {
            var info = new FileInfo(surroundings.FullPath(file));
            return info.Exists ? new(true, info.LastWriteTimeUtc, info.Length) : default;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return default;
        }
    }
}
