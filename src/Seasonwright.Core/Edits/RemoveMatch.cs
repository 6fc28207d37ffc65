using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Takes a match out of the season. Matches that waited for its outcome keep their words and wait for nothing.</summary>
public sealed record RemoveMatch(MatchId Match) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-match", season.Match(Match) is { } match ? MatchWords.Of(match) : Match);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Match, Match) is null) draft.Refuse("match-unknown", $"match/{Match}", Match);
        draft.Remove(SeasonFacets.Match, Match);
        foreach (var waiting in draft.Before.AllMatches.Where(match => match.Condition?.On == Match))
            draft.Set(SeasonFacets.Match, waiting.Id, waiting with { Condition = waiting.Condition! with { On = null } });
    }
}
