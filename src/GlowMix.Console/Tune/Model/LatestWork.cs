namespace GlowMix.Console.Tune.Model;

/// <summary>
/// A thread with room for one job: the latest. A new one cancels the one under way and takes the place of one that waits, so that
/// nothing ever queues.
/// </summary>
internal sealed class LatestWork : IDisposable
{
    private readonly Lock gate = new();
    private readonly AutoResetEvent wake = new(false);
    private readonly TimeSpan rest;
    private CancellationTokenSource current = new();
    private Action<CancellationToken>? pending;
    private bool hasEnded;
    private volatile bool isIdle = true;

    /// <param name="name">Of the thread.</param>
    /// <param name="rest">How long no new job must come before one is begun.</param>
    /// <param name="priority">Of the thread.</param>
    public LatestWork(string name, TimeSpan rest = default, ThreadPriority priority = ThreadPriority.Normal)
    {
        this.rest = rest;
        new Thread(Run)
        {
            IsBackground = true,
            Name = name,
            Priority = priority,
        }.Start();
    }

    /// <summary>Nothing is under way or waits.</summary>
    public bool IsIdle => isIdle;

    /// <summary>Gives it another job.</summary>
    public void Put(Action<CancellationToken> job)
    {
        lock (gate)
        {
            current.Cancel();
            current = new();
            pending = job;
            isIdle = false;
        }
        wake.Set();
    }

    /// <summary>Gives up what is under way or waits.</summary>
    public void Drop()
    {
        lock (gate)
        {
            current.Cancel();
            pending = null;
        }
    }

    /// <summary>Ends the thread as soon as its job lets it.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            hasEnded = true;
            current.Cancel();
        }
        wake.Set();
    }

    private void Run()
    {
        while (true)
        {
            wake.WaitOne();
            while (rest > TimeSpan.Zero && !hasEnded && wake.WaitOne(rest)) { }
            Action<CancellationToken>? job;
            CancellationToken stop;
            lock (gate)
            {
                if (hasEnded)
                {
                    return;
                }
                (job, stop) = (pending, current.Token);
                pending = null;
            }
            try
            {
                job?.Invoke(stop);
            }
            catch (OperationCanceledException)
            {
                // Something newer was asked for.
            }
            lock (gate)
            {
                isIdle = pending is null;
            }
        }
    }
}
