using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Proposing;

/// <summary>
/// The engine at work for one season. The run belongs to the season and not to a page: whoever opens the page sees the same one. It
/// ends by itself at the engine's limits of work, and when nobody has looked at it for a while.
/// </summary>
public sealed class ProposalRun : IDisposable
{
    /// <summary>How long a run goes on when its last viewer has left.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly Lock guard = new();
    private readonly CancellationTokenSource enough = new(), stop = new();
    private readonly ITimer alone;
    private readonly NaturalIds ids;
    private readonly TimeProvider clock;
    private readonly long began;
    private int viewers;

    internal ProposalRun(Asked asked, ProposalRun? without, TimeProvider clock)
    {
        BeforeLeavingOut = without?.State.Plans is [var first, ..] ? first : null;
        (Asked, this.clock, began, ids) = (asked, clock, clock.GetTimestamp(), new NaturalIds(asked.Season.Id));
        alone = clock.CreateTimer(_ => Stop(), null, Patience, Timeout.InfiniteTimeSpan);
        Ended = Task.Run(Work);
    }

    public Guid Id { get; } = Guid.CreateVersion7();

    public Asked Asked { get; }

    /// <summary>The plan with all that was asked for, where this run leaves something out to see what it costs.</summary>
    public Proposal? BeforeLeavingOut { get; }

    public RunState State { get; private set; } = new(RunStatus.AtWork, Stage.Structure, [], []);

    /// <summary>The gesture by which a plan of this run was taken: the same press once more is no second one.</summary>
    public Guid? TakenBy { get; set; }

    /// <summary>Whether a plan of it may still be taken into the season as it is.</summary>
    public bool IsOpenFor(Season season, Setup setup) => TakenBy is null && State.Status is RunStatus.AtWork or RunStatus.Done or RunStatus.Kept && Asked.IsOf(season, setup);

    /// <summary>How long the work took, or has taken so far.</summary>
    public TimeSpan Took { get; private set; }

    /// <summary>Ends with the run, however it ends.</summary>
    public Task Ended { get; }

    /// <summary>Raised with every better plan and at the end, on the engine's thread.</summary>
    public event Action? Changed;

    /// <summary>What is found is enough: it is made whole at once and kept.</summary>
    public void Keep() => enough.Cancel();

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

    /// <summary>The season with a found plan in it.</summary>
    /// <exception cref="InvalidOperationException">The season does not take it: a fault of the engine.</exception>
    public Season Planned(Proposal proposal) => proposal.Edits.Aggregate(Asked.Season, (season, edit) => Decider.Decide(season, edit) switch
    {
        Accepted accepted => season.With(accepted.Step),
        Refused refused => throw new InvalidOperationException(refused.Reasons[0].Sentence),
        var other => throw new InvalidOperationException($"{other}"),
    });

    /// <summary>The edits that bring a part of a found plan into the season.</summary>
    public ValueList<SeasonEdit> Part(Proposal proposal, Func<int, bool> weeks, Func<ProposedTrack, bool> tracks) =>
        Proposals.Part(Asked.Season, Asked.Setup, proposal, weeks, tracks, IdOf);

    public void Dispose()
    {
        Stop();
        alone.Dispose();
    }

    // A second proposal of the same season makes things of its own.
    private string IdOf(string kind, string key) => ids.Of(kind, Id.ToString(), key);

    private void Work()
    {
        try
        {
            var found = Proposals.Of(Asked.Season, Asked.Setup, Asked.Wishes, Asked.Plans, IdOf, new Watch((stage, best) => Tell(RunStatus.AtWork, stage, With(best)), enough.Token), stop.Token);
            var unavoidable = Asked.Wishes.Reach is not null && found is [{ Clash: null } repair, ..] && !enough.IsCancellationRequested ? Proposals.Unavoidable(Asked.Season, Asked.Setup, repair, stop.Token) : [];
            // Stopped late, what was found is half searched.
            stop.Token.ThrowIfCancellationRequested();
            Tell(enough.IsCancellationRequested ? RunStatus.Kept : RunStatus.Done, Stage.Emphasis, found, unavoidable);
        }
        catch (OperationCanceledException)
        {
            Tell(RunStatus.Stopped, State.Stage, []);
        }
        catch (Exception fault)
        {
            // Nobody awaits a run: the page has to say that it failed.
            Tell(RunStatus.Failed, State.Stage, []);
            System.Diagnostics.Trace.TraceError(fault.ToString());
        }
    }

    private void Tell(RunStatus status, Stage stage, ValueList<Proposal> found, ValueList<int>? unavoidable = null)
    {
        if (status == RunStatus.AtWork && stop.IsCancellationRequested) throw new OperationCanceledException(stop.Token);
        Took = clock.GetElapsedTime(began);
        State = new(status, stage, found, unavoidable ?? []);
        Changed?.Invoke();
    }

    /// <summary>A plan that gets better stands in its own place; another one beside those there are.</summary>
    private ValueList<Proposal> With(Proposal best) => [.. State.Plans.Where(plan => !ReferenceEquals(plan.Structure, best.Structure)), best];

    private void Leave()
    {
        lock (guard)
            if (--viewers == 0) alone.Change(Patience, Timeout.InfiniteTimeSpan);
    }

    private sealed class Viewer(ProposalRun run) : IDisposable
    {
        private int left;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref left, 1) == 0) run.Leave();
        }
    }
}

/// <summary>What a run has come to.</summary>
/// <param name="Stage">The stage that is or was at work.</param>
/// <param name="Plans">Whole plans once it is done; until then the best so far, or none.</param>
/// <param name="Unavoidable">Of a repair: <see cref="Proposals.Unavoidable"/>; none where the run was told that it is enough.</param>
public sealed record RunState(RunStatus Status, Stage Stage, ValueList<Proposal> Plans, ValueList<int> Unavoidable);

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
