using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Takes our matches out of a list, with what each row says by itself; every other row is told as skipped.</summary>
internal static class OurMatches
{
    public static List<FixtureDraft> Of(List<ListedMatch> matches, List<Sides> sides, ListDates dates, TeamChoice team, List<Skipped> skipped)
    {
        var drafts = new List<FixtureDraft>();
        // "vs X" means at home only in a list that writes "@ X" or "at X" for away.
        var versusIsHome = sides.Any(side => !side.AreBoth && side.Venue == Venue.Away) && sides.Any(side => side.Versus);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < matches.Count; i++)
        {
            var (match, side) = (matches[i], sides[i]);
            if (Reason(match, side, dates.Of[i], team) is { } reason) skipped.Add(Skipped.Of(match.Line, match.Raw, reason, match.Team.Length > 0 ? match.Team : "-"));
            else if (!seen.Add(Spelling.Fold(match.Raw) + "\n" + match.Section + "\n" + match.Team)) skipped.Add(Skipped.Of(match.Line, match.Raw, "repeat", match.SourceId.Length > 0 ? match.SourceId : "-"));
            else drafts.Add(Draft(match, side, dates.Of[i], team, versusIsHome));
        }
        return drafts;
    }

    private static string? Reason(ListedMatch match, Sides side, DateReading? date, TeamChoice team)
    {
        if (match.ByeOf.Length > 0) return team.IsOurs(match.ByeOf) ? "bye" : "bye-other";
        var isBye = new[] { match.Opponent, match.Pair, match.KickOff, match.Home, match.Away, match.Status, match.Result, match.Competition, match.Round }.Concat(match.Venues).Any(ListWords.IsBye) || ListWords.IsBye(side.Opponent);
        if (side.AreBoth && !team.IsOurs(side.Home!) && !team.IsOurs(side.Away!)) return isBye ? "bye-other" : "other-teams";
        if (!team.IsOurSide(match.Team)) return "other-squad";
        if (isBye) return "bye";
        // In a list of pairs a row with one name is no match of ours unless it is.
        if (team.Team is not null && !side.AreBoth && team.Teams.Count > 0 && match.Team.Length == 0 && match.Home.Length + match.Away.Length > 0 && !team.IsOurs(match.Home + match.Away)) return "other-teams";
        if (!side.AreBoth && (ListWords.IsInside(match.Competition) || ListWords.IsInside(side.Opponent))) return "inside";
        return side.Opponent.Length == 0 && !side.AreBoth && date is null && match.SourceId.Length == 0 && match.Home.Length + match.Away.Length == 0 ? "remark" : null;
    }

    private static FixtureDraft Draft(ListedMatch match, Sides side, DateReading? date, TeamChoice team, bool versusIsHome)
    {
        var atHome = side.AreBoth && team.IsOurs(side.Home!);
        var draft = new FixtureDraft(match, side, date)
        {
            Written = side.AreBoth ? atHome ? side.Away! : side.Home! : side.Opponent,
            Venue = side.AreBoth ? side.Venue == Venue.Neutral ? Venue.Neutral : atHome ? Venue.Home : Venue.Away : side.Venue ?? (side.Versus && versusIsHome ? Venue.Home : null),
            IsTurned = side.AreBoth && !atHome && !side.AwayFirst,
        };
        var (competition, round) = match.Round.Length > 0 ? (match.Competition, match.Round) : RoundText.Behind(match.Competition);
        (draft.Competition, draft.Round) = (Said(competition), Said(round ?? ""));
        draft.Opponent = TimeText.IsUnknown(draft.Written) ? null : Said(draft.Written);
        draft.TakeTime(Clock(draft));
        draft.TakeResult(match.Result);
        draft.Condition = Said(draft.Texts.Append(match.Round).FirstOrDefault(ListWords.IsCondition) ?? "");
        PickDay(draft);
        draft.Status = StatusOf(draft);
        return draft;
    }

    // A time beside the date holds where the row has no time of its own.
    private static string Clock(FixtureDraft draft)
    {
        if (draft.Listed.KickOff.Length > 0) return draft.Listed.KickOff;
        var rest = draft.DateRest.TrimStart('T', ' ', ',').Replace("Uhr", "", StringComparison.OrdinalIgnoreCase).Trim();
        // A zone behind it makes it another clock than the venue's: to be asked.
        if (rest.EndsWith('Z') && TimeText.Read(rest[..^1]).Time is not null) return rest[..^1] + "?";
        return TimeText.Read(rest).Time is not null ? rest : "";
    }

    // "Sat" below "weekend of 19/20 September": the one day of the span with that name.
    private static void PickDay(FixtureDraft draft)
    {
        if (draft.Date?.Days is not { Length: > 1 and <= 7 } span || CalendarWords.Weekday(draft.Listed.Weekday) is not { } weekday) return;
        (draft.Day, draft.LastDay) = (span.Days().Where(day => day.DayOfWeek == weekday).Select(day => (DateOnly?)day).FirstOrDefault() ?? draft.Day, null);
    }

    private static MatchStatus StatusOf(FixtureDraft draft)
    {
        var texts = draft.Texts.Where(text => text != draft.Condition).ToList();
        if (texts.Any(ListWords.IsCancelled)) return MatchStatus.Cancelled;
        if (texts.Any(ListWords.IsPostponed)) return MatchStatus.Postponed;
        if (draft.Condition is not null) return MatchStatus.Conditional;
        // What calls itself tentative is so, also over more days than one.
        if (ListWords.IsTentative(draft.Listed.Status)) return MatchStatus.Provisional;
        if (draft.LastDay is not null) return MatchStatus.Window;
        var isTentative = ListWords.IsTentative(draft.Listed.Remarks) || draft.DateRest.Contains('?', StringComparison.Ordinal) || ListWords.IsTentative(draft.DateRest);
        return isTentative || draft.Day is null && draft.Date?.Ask is null ? MatchStatus.Provisional : MatchStatus.Confirmed;
    }

    private static string? Said(string text) => text.Length == 0 ? null : text;
}
