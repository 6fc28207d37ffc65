using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Proposing;

/// <summary>A year proposed, or repaired, for one season.</summary>
public sealed class ProposalRun : Run
{
    private readonly CancellationTokenSource enough = new();
    private readonly NaturalIds ids;

    internal ProposalRun(Asked asked, ProposalRun? without, TimeProvider clock) : base(clock)
    {
        BeforeLeavingOut = without?.State.Plans is [var first, ..] ? first : null;
        (Asked, ids) = (asked, new NaturalIds(asked.Season.Id));
        Begin();
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

    /// <summary>What is found is enough: it is made whole at once and kept.</summary>
    public void Keep() => enough.Cancel();

    /// <summary>The season with a found plan in it.</summary>
    /// <exception cref="InvalidOperationException">The season does not take it: a fault of the engine.</exception>
    public Season Planned(Proposal proposal) => Decider.After(Asked.Season, proposal.Edits);

    /// <summary>The edits that bring a part of a found plan into the season.</summary>
    public ValueList<SeasonEdit> Part(Proposal proposal, Func<int, bool> weeks, Func<ProposedTrack, bool> tracks) =>
        Proposals.Part(Asked.Season, Asked.Setup, proposal, weeks, tracks, IdOf);

    private protected override void Work()
    {
        var found = Proposals.Of(Asked.Season, Asked.Setup, Asked.Wishes, Asked.Plans, IdOf, new Watch(AtWork, enough.Token), Stopped);
        var unavoidable = Asked.Wishes.Reach is not null && found is [{ Clash: null } repair, ..] && !enough.IsCancellationRequested ? Proposals.Unavoidable(Asked.Season, Asked.Setup, repair, Stopped) : [];
        // Stopped late, what was found is half searched.
        Stopped.ThrowIfCancellationRequested();
        Tell(new(enough.IsCancellationRequested ? RunStatus.Kept : RunStatus.Done, Stage.Emphasis, found, unavoidable));
    }

    private protected override void End(RunStatus status) => Tell(new(status, State.Stage, [], []));

    // A second proposal of the same season makes things of its own.
    private string IdOf(string kind, string key) => ids.Of(kind, Id.ToString(), key);

    private void AtWork(Stage stage, ValueList<Proposal> plans)
    {
        Stopped.ThrowIfCancellationRequested();
        Tell(new(RunStatus.AtWork, stage, plans, []));
    }

    private void Tell(RunState state)
    {
        State = state;
        Tell();
    }
}

/// <summary>What a run has come to.</summary>
/// <param name="Stage">The stage that is or was at work.</param>
/// <param name="Plans">Whole plans once it is done; until then the best so far, or none.</param>
/// <param name="Unavoidable">Of a repair: <see cref="Proposals.Unavoidable"/>; none where the run was told that it is enough.</param>
public sealed record RunState(RunStatus Status, Stage Stage, ValueList<Proposal> Plans, ValueList<int> Unavoidable);
