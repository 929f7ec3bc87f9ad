using System.Collections.Concurrent;
using System.Diagnostics;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace GlowMix.Console.Tune.Views;

/// <summary>
/// Turns the toolkit's loop when there is something to do, instead of so many times a second: a key or an answer is seen at once, and
/// while nothing happens next to nothing is done or sent to the terminal.
/// </summary>
internal sealed class WakefulLoop
{
    // How long a new size of the terminal, a timer or the end of a lone Esc may wait.
    private static readonly TimeSpan longestWait = TimeSpan.FromMilliseconds(40);

    // The toolkit tells nobody that it has read a key.
    private static readonly TimeSpan look = TimeSpan.FromMilliseconds(2);

    // Nobody is there: look less often. The first key that comes later waits that much more, and none after it.
    private static readonly TimeSpan lookWithoutHand = TimeSpan.FromMilliseconds(20);
    private static readonly TimeSpan handGone = TimeSpan.FromSeconds(10);

    // The toolkit's loop must not rest by itself.
    private const ushort WithoutRest = 1000;

    private readonly object gate = new();
    private readonly IApplication app;
    private readonly ConcurrentQueue<char> keys;
    private bool isPosted;
    private long lastBusy = Stopwatch.GetTimestamp();

    /// <summary>Begins on a terminal.</summary>
    /// <param name="app">The toolkit; not begun.</param>
    public WakefulLoop(IApplication app)
    {
        this.app = app;
        Application.MaximumIterationsPerSecond = WithoutRest;
        app.Init(DriverRegistry.Names.ANSI);
        keys = ((InputProcessorImpl<char>)app.Driver!.GetInputProcessor()).InputQueue;
        app.Iteration += (_, _) => Wait();
    }

    /// <summary>Does something on the screen's thread and draws what it changed.</summary>
    public void Post(Action action)
    {
        app.Invoke(() =>
        {
            action();
            // The loop draws first and then does what is posted: once more.
            Wake();
        });
        Wake();
    }

    private void Wake()
    {
        lock (gate)
        {
            isPosted = true;
            Monitor.Pulse(gate);
        }
    }

    private void Wait()
    {
        long from = Stopwatch.GetTimestamp();
        bool isHandThere = Stopwatch.GetElapsedTime(lastBusy) < handGone;
        lock (gate)
        {
            while (!isPosted && keys.IsEmpty && Stopwatch.GetElapsedTime(from) < longestWait)
            {
                Monitor.Wait(gate, isHandThere ? look : lookWithoutHand);
            }
            isPosted = false;
        }
        if (!keys.IsEmpty)
        {
            lastBusy = Stopwatch.GetTimestamp();
        }
    }
}
