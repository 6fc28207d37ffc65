using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>
/// "We won", "we are out": the matches that waited for this outcome are settled in one step, down the whole chain. In a best-of
/// series the games that must follow are on, and once it is decided the rest is called off.
/// </summary>
public sealed record SettleMatch(MatchId Match, Outcome Outcome) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) =>
        Sentences.Say(Outcome == Outcome.Won ? "did.settle-won" : "did.settle-lost", season.Match(Match) is { } match ? MatchWords.Of(match) : Match);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Match, Match) is not { } match)
        {
            draft.Refuse("match-unknown", $"match/{Match}", Match);
            return;
        }
        SetMatch.Write(draft, match with { Outcome = Outcome });
        HashSet<MatchId> seen = [Match];
        if (match.Series is not null) SettleSeries(draft, match, seen);
        Settle(draft, Match, Outcome, seen);
    }

    private void SettleSeries(SeasonDraft draft, Match decided, HashSet<MatchId> seen)
    {
        var series = decided.Series!;
        var others = draft.Before.AllMatches
            .Where(match => match.Id != Match && match.Competition == decided.Competition && match.Series?.Name == series.Name && match.Series.BestOf == series.BestOf)
            .ToList();
        var won = others.Count(game => game.Outcome == Seasons.Outcome.Won) + (Outcome == Seasons.Outcome.Won ? 1 : 0);
        var lost = others.Count(game => game.Outcome == Seasons.Outcome.Lost) + (Outcome == Seasons.Outcome.Lost ? 1 : 0);
        // So many more games there will be at least: neither side can end it sooner.
        var certain = series.BestOf / 2 + 1 - Math.Max(won, lost);
        // A game called off before is called off for a reason of its own, unless this answer corrects an earlier one.
        var corrects = decided.Outcome is { } earlier && earlier != Outcome;
        var open = others.Where(game => game.Outcome is null && (corrects || game.Status != MatchStatus.Cancelled)).OrderBy(game => game.Series!.Game);
        foreach (var (index, game) in open.Index())
        {
            if (!seen.Add(game.Id)) continue;
            var status = certain <= 0 ? MatchStatus.Cancelled
                : index < certain && game.Status is MatchStatus.Conditional or MatchStatus.Cancelled ? StatusOnceOn(game)
                : game.Status == MatchStatus.Cancelled ? MatchStatus.Conditional
                : game.Status;
            SetMatch.Write(draft, game with { Status = status });
            if (status == MatchStatus.Cancelled) Settle(draft, game.Id, null, seen);
            else if (game.Status == MatchStatus.Cancelled) Reopen(draft, game.Id, seen);
        }
    }

    /// <summary>What a match is when nothing stands in its way any more.</summary>
    private static MatchStatus StatusOnceOn(Match match) => match switch
    {
        { Day: null } => MatchStatus.Postponed,
        { LastDay: null } => MatchStatus.Confirmed,
        _ => MatchStatus.Window,
    };

    /// <param name="outcome">Null when the match will not be played: nothing that waits for it can be.</param>
    private static void Settle(SeasonDraft draft, MatchId decided, Outcome? outcome, HashSet<MatchId> seen)
    {
        foreach (var waiting in draft.Before.AllMatches.Where(match => match.Condition?.On == decided))
        {
            // A ring of conditions (each waits for the other) ends here rather than never.
            if (!seen.Add(waiting.Id)) continue;
            var isOn = waiting.Condition!.Needs == outcome;
            SetMatch.Write(draft, waiting with { Status = isOn ? StatusOnceOn(waiting) : MatchStatus.Cancelled });
            if (!isOn) Settle(draft, waiting.Id, null, seen);
            else Reopen(draft, waiting.Id, seen);
        }
    }

    /// <summary>What an earlier, opposite answer had called off further down waits again.</summary>
    private static void Reopen(SeasonDraft draft, MatchId decided, HashSet<MatchId> seen)
    {
        foreach (var waiting in draft.Before.AllMatches.Where(match => match.Condition?.On == decided && match.Status == MatchStatus.Cancelled))
        {
            if (!seen.Add(waiting.Id)) continue;
            SetMatch.Write(draft, waiting with { Status = MatchStatus.Conditional });
            Reopen(draft, waiting.Id, seen);
        }
    }
}
