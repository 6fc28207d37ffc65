using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Proposing;

/// <summary>Both ways on from one match, worked out once for all who look.</summary>
public sealed class WaysRun : Run
{
    internal WaysRun(Asked asked, MatchId match, TimeProvider clock) : base(clock)
    {
        (Asked, Match) = (asked, match);
        Begin();
    }

    public Asked Asked { get; }

    public MatchId Match { get; }

    public WaysState State { get; private set; } = new(RunStatus.AtWork, 0, null);

    /// <summary>Whether it says what it would say if it were begun now.</summary>
    internal bool Answers(Asked asked) => State.Status is RunStatus.AtWork or RunStatus.Done && Asked.IsOf(asked.Season, asked.Setup) && Asked.Wishes.From == asked.Wishes.From;

    private protected override void Work()
    {
        var both = Ways.Of(Asked, Match, made => Tell(new(RunStatus.AtWork, made, null)), Stopped);
        Stopped.ThrowIfCancellationRequested();
        Tell(new(RunStatus.Done, Branches.Plans, both));
    }

    private protected override void End(RunStatus status) => Tell(new(status, State.Made, null));

    private void Tell(WaysState state)
    {
        State = state;
        Tell();
    }
}

/// <summary>How far both ways are worked out.</summary>
/// <param name="Made">Plans made so far, of <see cref="Branches.Plans"/>.</param>
/// <param name="Both">Null until it is done, and where no week is left in which the ways could part.</param>
public sealed record WaysState(RunStatus Status, int Made, Branches? Both);
