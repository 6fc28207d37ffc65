using System.Collections.Concurrent;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Proposing;

/// <summary>The last run of each season, and both ways on from each of its matches that were looked at. They live as long as the program: what is proposed and not taken is not kept.</summary>
public sealed class ProposalRuns(TimeProvider clock) : IDisposable
{
    private readonly ConcurrentDictionary<SeasonId, ProposalRun> runs = new();
    private readonly Dictionary<(SeasonId, MatchId), WaysRun> ways = [];
    private readonly Lock guard = new();

    /// <summary>The season's run; null where nothing was asked.</summary>
    public ProposalRun? Of(SeasonId season) => runs.GetValueOrDefault(season);

    /// <summary>Begins a run in the place of the season's last one, which ends.</summary>
    /// <param name="asked">What is asked.</param>
    /// <param name="without">The run from which this one leaves something out.</param>
    public ProposalRun Begin(Asked asked, ProposalRun? without = null)
    {
        var run = new ProposalRun(asked, without, clock);
        ProposalRun? before = null;
        runs.AddOrUpdate(asked.Season.Id, run, (_, old) => { before = old; return run; });
        before?.Dispose();
        return run;
    }

    /// <summary>Both ways on from a match: the run there is, where it is of the season as it stands now, or a new one in its place.</summary>
    public WaysRun BothWays(Asked asked, MatchId match)
    {
        lock (guard)
        {
            if (ways.TryGetValue((asked.Season.Id, match), out var run) && run.Answers(asked)) return run;
            run?.Dispose();
            return ways[(asked.Season.Id, match)] = new WaysRun(asked, match, clock);
        }
    }

    public void Dispose()
    {
        foreach (var run in runs.Values) run.Dispose();
        lock (guard)
            foreach (var run in ways.Values) run.Dispose();
    }
}
