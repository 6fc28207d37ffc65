namespace Seasonwright.Desk.Proposing;

/// <summary>
/// The engine at work. A run belongs to what it is about and not to a page: whoever opens the page sees the same one. It ends by itself at
/// the engine's limits of work, and when nobody has looked at it for a while.
/// </summary>
public abstract class Run : IDisposable
{
    /// <summary>How long a run goes on when its last viewer has left.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly Lock guard = new();
    private readonly CancellationTokenSource stop = new();
    private readonly ITimer alone;
    private readonly TimeProvider clock;
    private readonly long began;
    private int viewers;

    private protected Run(TimeProvider clock)
    {
        (this.clock, began) = (clock, clock.GetTimestamp());
        alone = clock.CreateTimer(_ => Stop(), null, Patience, Timeout.InfiniteTimeSpan);
    }

    /// <summary>How long the work took, or has taken so far.</summary>
    public TimeSpan Took { get; private set; }

    /// <summary>Ends with the run, however it ends.</summary>
    public Task Ended { get; private set; } = Task.CompletedTask;

    /// <summary>Raised with all that is new and at the end, on the engine's thread.</summary>
    public event Action? Changed;

    /// <summary>Cancelled when nothing is wanted any more.</summary>
    private protected CancellationToken Stopped => stop.Token;

    /// <summary>Nothing is wanted any more.</summary>
    public void Stop() => stop.Cancel();

    /// <summary>Somebody looks at the run until the returned value is disposed of.</summary>
    public IDisposable Watch()
    {
        lock (guard)
        {
            viewers++;
            alone.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        }
        return new Viewer(this);
    }

    public void Dispose()
    {
        Stop();
        alone.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>The last thing a run's constructor does.</summary>
    private protected void Begin() => Ended = Task.Run(() =>
    {
        try
        {
            Work();
        }
        catch (OperationCanceledException)
        {
            End(RunStatus.Stopped);
        }
        catch (Exception fault)
        {
            // Nobody awaits a run: the page has to say that it failed.
            End(RunStatus.Failed);
            System.Diagnostics.Trace.TraceError(fault.ToString());
        }
    });

    /// <summary>All of the work, on a thread of its own.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    private protected abstract void Work();

    /// <summary>Ends without anything found.</summary>
    private protected abstract void End(RunStatus status);

    /// <summary>Tells all who look.</summary>
    private protected void Tell()
    {
        Took = clock.GetElapsedTime(began);
        Changed?.Invoke();
    }

    private void Leave()
    {
        lock (guard)
            if (--viewers == 0) alone.Change(Patience, Timeout.InfiniteTimeSpan);
    }

    private sealed class Viewer(Run run) : IDisposable
    {
        private int left;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref left, 1) == 0) run.Leave();
        }
    }
}

/// <summary>How a run stands.</summary>
public enum RunStatus
{
    AtWork,

    /// <summary>It ended by itself.</summary>
    Done,

    /// <summary>It was told that what it has is enough.</summary>
    Kept,

    /// <summary>It was stopped, or nobody looked at it any more; there is nothing.</summary>
    Stopped,

    /// <summary>A fault of ours.</summary>
    Failed,
}
