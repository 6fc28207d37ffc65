using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Gives a match another day, time or window. A postponed or windowed match that gets one day is confirmed by it.</summary>
/// <param name="LastDay">The last possible day of a window; null for one day.</param>
/// <param name="KickOff">Null when not known.</param>
public sealed record MoveMatch(MatchId Match, DateOnly Day, DateOnly? LastDay = null, TimeOnly? KickOff = null) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) =>
        Sentences.Say("did.move-match", season.Match(Match) is { } match ? MatchWords.Of(match) : Match, MatchWords.Of(Day));

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Match, Match) is not { } match)
        {
            draft.Refuse("match-unknown", $"match/{Match}", Match);
            return;
        }
        var window = LastDay is { } last && last != Day;
        var moved = match with
        {
            Day = Day,
            LastDay = window ? LastDay : null,
            KickOff = KickOff,
            Status = match.Status switch
            {
                MatchStatus.Conditional or MatchStatus.Cancelled or MatchStatus.Provisional => match.Status,
                _ => window ? MatchStatus.Window : MatchStatus.Confirmed,
            },
        };
        SetMatch.Check(draft, moved);
        SetMatch.Write(draft, moved);
    }
}
