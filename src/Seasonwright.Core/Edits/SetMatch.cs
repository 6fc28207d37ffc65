using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds a match or changes any of its fields.</summary>
public sealed record SetMatch(Match Match) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) =>
        Sentences.Say(season.Match(Match.Id) is null ? "did.add-match" : "did.change-match", MatchWords.Of(Match));

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Match);
        if (Match.Condition?.On is { } on && draft.Find(SeasonFacets.Match, on) is null) draft.Refuse("match-unknown", $"match/{on}", on);
        Write(draft, Match);
    }

    /// <summary>Writes a match that was changed by hand: where it came from and what its list said of it stay known.</summary>
    internal static void Write(SeasonDraft draft, Match match) =>
        draft.Set(SeasonFacets.Match, match.Id, draft.Find(SeasonFacets.Match, match.Id) is { Source: not null } before ? match.ListedAs(before.AsListed()) : match);

    internal static void Check(Draft draft, Match match)
    {
        var subject = $"match/{match.Id}";
        draft.RequirePossible(match.Day, $"{subject}.day");
        draft.RequirePossible(match.LastDay, $"{subject}.lastDay");
        if (match.LastDay is { } last && !(match.Day <= last)) draft.Refuse("days-backward", $"{subject}.lastDay", match.Day, last);
        if (match.Zone is { } zone && !KickOff.IsZone(zone)) draft.Refuse("zone-unknown", $"{subject}.zone", zone);
        foreach (var (text, field) in new[] { (match.Opponent, "opponent"), (match.Competition, "competition"), (match.Round, "round"), (match.Place, "place"), (match.Result, "result"), (match.Note, "note"), (match.Condition?.Words, "condition"), (match.Series?.Name, "series"), (match.Source?.Id, "source") })
            draft.Limit(text, $"{subject}.{field}", SeasonDraft.LongestText);
        if (match.Series is { } series && (series.BestOf is < 3 or > 9 || series.BestOf % 2 == 0 || series.Game < 1 || series.Game > series.BestOf))
            draft.Refuse("series", $"{subject}.series", series.Game, series.BestOf);
        if (match.Source?.Listed is not null) Check(draft, match.AsListed());
        if (match.Condition?.On == match.Id) draft.Refuse("condition-itself", subject);
        if (match.Status == MatchStatus.Window && (match.Day is null || match.LastDay is null)) draft.Refuse("window-open", subject);
        if (match is { Day: null, Status: MatchStatus.Confirmed or MatchStatus.Provisional }) draft.Refuse("match-undated", subject);
    }
}
