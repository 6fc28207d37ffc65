using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>"We won", "we are out": the matches that waited for this outcome are settled in one step, down the whole chain.</summary>
public sealed record SettleMatch(MatchId Match, Outcome Outcome) : SeasonEdit
{
    public override string Describe(Season season) =>
        Sentences.Say(Outcome == Outcome.Won ? "did.settle-won" : "did.settle-lost", season.Match(Match) is { } match ? MatchWords.Of(match) : Match);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Match, Match) is not { } match)
        {
            draft.Refuse("match-unknown", $"match/{Match}", Match);
            return;
        }
        draft.Set(SeasonFacets.Match, Match, match with { Outcome = Outcome });
        Settle(draft, Match, Outcome, [Match]);
    }

    /// <param name="outcome">Null when the match will not be played: nothing that waits for it can be.</param>
    private static void Settle(SeasonDraft draft, MatchId decided, Outcome? outcome, HashSet<MatchId> seen)
    {
        foreach (var waiting in draft.Before.AllMatches.Where(match => match.Condition?.On == decided))
        {
            // A ring of conditions (each waits for the other) ends here rather than never.
            if (!seen.Add(waiting.Id)) continue;
            var isOn = waiting.Condition!.Needs == outcome;
            var settled = waiting with
            {
                Status = !isOn ? MatchStatus.Cancelled
                    : waiting.Day is null ? MatchStatus.Postponed
                    : waiting.LastDay is null ? MatchStatus.Confirmed
                    : MatchStatus.Window,
            };
            draft.Set(SeasonFacets.Match, waiting.Id, settled);
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
            draft.Set(SeasonFacets.Match, waiting.Id, waiting with { Status = MatchStatus.Conditional });
            Reopen(draft, waiting.Id, seen);
        }
    }
}
