namespace GlowMix.Console.Commands;

/// <summary>Does something, and again at each save of a file that it read, until it is stopped.</summary>
internal sealed class WatchLoop(Surroundings surroundings, IRecipeRunner runner)
{
    private const string ClearScreen = "\e[H\e[2J";

    /// <summary>Runs until Ctrl-C, which is the way to end it and no failure.</summary>
    /// <param name="files">The files that the user named.</param>
    /// <param name="once">What is done; it tells its own problems.</param>
    public int Run(IReadOnlyList<string> files, Action once)
    {
        surroundings.IsEndedByCtrlC = true;
        var watch = new FileWatch(surroundings);
        watch.Add(files);
        // Taken as it is before it is read: what is saved in between is seen.
        surroundings.Opened = file => watch.Add([file]);
        try
        {
            while (true)
            {
                once();
                if (surroundings.TerminalColumns is not null)
                {
                    var sheet = surroundings.Sheet();
                    sheet.Blank();
                    sheet.Aside($"Watching {string.Join(", ", files)}; Ctrl-C ends.");
                }
                surroundings.Out.Flush();
                var changed = watch.Wait();
                if (changed.Count == 0)
                {
                    return ExitCode.Done;
                }
                if (changed.Any(c => !files.Contains(c)))
                {
                    runner.Forget();
                }
                Begin(changed);
            }
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Done;
        }
        finally
        {
            surroundings.Opened = null;
        }
    }

    private void Begin(IReadOnlyList<string> changed)
    {
        if (surroundings.Emphasis)
        {
            surroundings.Out.Write(ClearScreen);
        }
        var sheet = surroundings.Sheet();
        sheet.Blank();
        sheet.Aside($"Again: {string.Join(", ", changed)} changed.");
        sheet.Blank();
        surroundings.Out.Flush();
    }
}
