using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>
/// What a season has to say in a calendar. Notes stay out of it: they are the coach's, and a calendar goes from phone to phone.
/// </summary>
internal sealed class CalendarEntries(Season season, Setup setup, CalendarChoices choices)
{
    /// <summary>How long a match takes of a day. Common practice, no source.</summary>
    private static readonly TimeSpan MatchTime = TimeSpan.FromHours(2);

    private static readonly Key Locale = SetupFacets.Locale.Of(default);

    private readonly YearWords words = new(season, setup);

    /// <summary>Everything with a day, wherever it lies.</summary>
    public static IReadOnlyList<PlannedEntry> Of(Season season, Setup setup, CalendarChoices choices) =>
        [.. new CalendarEntries(choices.KeyMatches ? season : season.WithoutKeyMatches(), setup, choices).All()];

    private IEnumerable<PlannedEntry> All()
    {
        if (choices.Matches)
            foreach (var match in season.AllMatches)
                if (Match(match) is { } entry) yield return entry;
        if (choices.Events)
            foreach (var item in season.AllEvents.Where(item => Concerns(item.For)))
                foreach (var entry in Event(item)) yield return entry;
        if (choices.TestDays)
            foreach (var test in season.AllTestDays.Where(test => Concerns(test.For))) yield return Test(test);
        if (choices.Sessions)
            foreach (var session in season.AllSessions.Where(Concerns)) yield return Session(session);
        if (choices.Practices)
            foreach (var week in season.Weeks)
                if (season.PracticesOf(week.Id) is { Count: > 0 } practices && !(choices.Sessions && season.SessionsIn(week).Any(session => !session.IsOurs))) yield return Practices(week, practices);
    }

    private PlannedEntry? Match(Match match)
    {
        if (match.Days is not { } days) return null;
        var isHere = days.Length == 1 && match.KickOff is not null;
        var key = SeasonFacets.Match.Of(match.Id);
        var zone = match.Zone ?? setup.Locale.Zone;
        var title = Say($"calendar.match.{match.Venue?.ToString() ?? "Unknown"}", match.Opponent ?? Say("calendar.match.open"));
        var entry = new CalendarEntry(
            CalendarUid.Of(season.Id, key), CalendarTime.Of(days.First), EndOf(days), Clean(title) ?? "", EntryStatus.Confirmed, IsFree: false, Clean(match.Place),
            Lines([season.Team.Name, YearWords.Join(YearWords.Details(match))]),
            Words(["calendar.kind.match", match.Importance switch { Importance.Friendly => "calendar.kind.friendly", Importance.Key => "calendar.kind.key", _ => null }]), "teal");
        if (isHere)
        {
            var start = new KickOff(days.First, match.KickOff!.Value, zone).ToInstant();
            entry = entry with { Start = CalendarTime.Of(start, zone), End = CalendarTime.Of(start + MatchTime, zone) };
        }
        return new PlannedEntry(
            match.Status switch
            {
                MatchStatus.Confirmed => entry,
                MatchStatus.Postponed or MatchStatus.Cancelled => entry.CalledOff(),
                _ => Unsure(entry, YearTexts.Say($"match.status.{match.Status}")),
            },
            // Its clock may be the team's, and a number that has counted the team's settings once may not fall when it no longer is.
            [key, Locale], IsTaken: match.Status == MatchStatus.Postponed);
    }

    private IEnumerable<PlannedEntry> Event(Event item)
    {
        var key = SeasonFacets.Event.Of(item.Id);
        var entry = new CalendarEntry(
            CalendarUid.Of(season.Id, key), CalendarTime.Of(item.Days.First), EndOf(item.Days), Clean(item.Title) ?? "", EntryStatus.Confirmed, IsFree: true, Clean(item.Place),
            Lines([season.Team.Name, YearWords.Join([.. YearWords.Kind(item) is { } kind ? [kind] : Array.Empty<string>(), .. YearWords.Details(item)])]),
            [YearTexts.Forms($"event.{item.Kind}")[0]], item.Kind == EventKind.Travel ? "slategray" : "tan");
        yield return new(Sure(entry), [key]);

        foreach (var (leg, index) in (item.Legs ?? []).Select((leg, index) => (leg, index)))
            yield return new(Sure(Leg(item, leg, entry with { Uid = CalendarUid.Of(season.Id, key, FormattableString.Invariant($"leg {index + 1}")) })), [key]);

        CalendarEntry Sure(CalendarEntry entry) => item.Provisional ? Unsure(entry, YearTexts.Say("event.provisional")) : entry;
    }

    /// <summary>Times of a leg are those of its places, as on a ticket: no zone is known for them.</summary>
    private static CalendarEntry Leg(Event item, Leg leg, CalendarEntry journey)
    {
        var arrivalDay = leg.ArrivalDay ?? leg.Day;
        var start = leg.Departs is { } departs ? CalendarTime.OfPlace(leg.Day, departs) : CalendarTime.Of(leg.Day);
        var end = leg.Arrives is { } arrives ? CalendarTime.OfPlace(arrivalDay, arrives) : (CalendarTime?)null;
        return journey with
        {
            Start = start,
            // Over the date line one may arrive before one has left.
            End = start.IsDay ? EndOf(new DaySpan(leg.Day, arrivalDay > leg.Day ? arrivalDay : leg.Day)) : end is { } there && there.Clock > start.Clock ? there : null,
            Summary = Clean((leg.From, leg.To) switch
            {
                ({ } from, { } to) => Say("calendar.leg", from, to),
                ({ } from, null) => Say("calendar.leg.from", from),
                (null, { } to) => Say("calendar.leg.to", to),
                _ => item.Title,
            }) ?? "",
            Place = Clean(leg.From),
            Description = Lines([
                item.Title,
                leg.Departs is { } departing ? Say("calendar.departs", departing.Iso()) : null,
                leg.Arrives is { } arriving ? Say("calendar.arrives", arriving.Iso()) : null,
                leg.ZoneShift is { } shift and not 0 ? Say("calendar.shift", shift) : null,
            ]),
            Categories = [YearTexts.Forms($"event.{EventKind.Travel}")[0]],
            Colour = "slategray",
        };
    }

    private PlannedEntry Test(TestDay test)
    {
        var key = SeasonFacets.TestDay.Of(test.Id);
        string?[] details = [test.Part, test.For is { } whom ? YearTexts.Say("event.for", whom) : null, test.Source?.Vanished == true ? YearTexts.Say("list.vanished") : null];
        return new(new CalendarEntry(
            CalendarUid.Of(season.Id, key), CalendarTime.Of(test.Day), EndOf(DaySpan.Of(test.Day)), Clean(Say("calendar.test", test.Battery)) ?? "", EntryStatus.Confirmed, IsFree: false, null,
            Lines([season.Team.Name, YearWords.Join(details.OfType<string>())]), Words(["calendar.kind.test"]), "steelblue"), [key]);
    }

    private PlannedEntry Session(Session session)
    {
        var key = SeasonFacets.Session.Of(session.Id);
        var zone = setup.Locale.Zone;
        var entry = new CalendarEntry(
            CalendarUid.Of(season.Id, key), CalendarTime.Of(session.Day), EndOf(DaySpan.Of(session.Day)), Clean(session.Start is null ? Say("calendar.session", SessionWords.Name(session), Sentences.Say($"slot.{session.Slot}")) : SessionWords.Name(session)) ?? "",
            EntryStatus.Confirmed, IsFree: false, Clean(session.Place),
            Lines([season.Team.Name, SessionLine.Dose(session), SessionLine.Groups(session, season) is { Count: > 0 } groups ? YearTexts.Say("event.for", string.Join(", ", groups)) : null, .. SessionLine.Waves(session)]),
            Words([session.IsOurs ? "calendar.kind.session" : "calendar.kind.practice"]), session.IsOurs ? "darkcyan" : "cadetblue");
        if (session.Start is { } start)
        {
            var begins = new KickOff(session.Day, start, zone).ToInstant();
            entry = entry with { Start = CalendarTime.Of(begins, zone), End = CalendarTime.Of(begins + TimeSpan.FromMinutes(session.Minutes.Value), zone) };
        }
        return new(session.IsCancelled ? entry.CalledOff() : entry, [key, Locale]);
    }

    private PlannedEntry Practices(SeasonWeek week, Practices practices)
    {
        var key = SeasonFacets.WeekPractices.Of(week.Id);
        return new(new CalendarEntry(
            CalendarUid.Of(season.Id, key), CalendarTime.Of(week.Days.First), EndOf(week.Days), Capital(words.Practices(practices)), EntryStatus.Confirmed, IsFree: true, null,
            Lines([season.Team.Name]), Words(["calendar.kind.practices"]), "cadetblue"),
            [key, SeasonFacets.Frame.Of(default), SetupFacets.UsualWeek.Of(default)]);
    }

    private bool Concerns(Session session) => choices.Group is not { } name || session.Groups is null || season.Groups.Any(line => line.Name == name && session.IsFor(line.Id));

    /// <summary>Whether something for these people is for whom the calendar is: unless it names another group of the season and not theirs.</summary>
    private bool Concerns(string? whom) => whom is null || choices.Group is not { } group || Names(whom, group)
        || !season.Groups.Any(other => Names(whom, other.Name));

    private static bool Names(string whom, string group)
    {
        for (var at = whom.IndexOf(group, StringComparison.OrdinalIgnoreCase); at >= 0; at = whom.IndexOf(group, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            var end = at + group.Length;
            if ((at == 0 || !char.IsLetterOrDigit(whom[at - 1])) && (end == whom.Length || !char.IsLetterOrDigit(whom[end]))) return group.Length > 0;
        }
        return false;
    }

    /// <summary>Said in its title too: many programs show no status.</summary>
    private static CalendarEntry Unsure(CalendarEntry entry, string how) =>
        entry with { Status = EntryStatus.Tentative, Summary = PlainText.Clean(Say("calendar.unsure", entry.Summary, how)) };

    private static CalendarTime? EndOf(DaySpan days) => days.Last == DateOnly.MaxValue ? null : CalendarTime.Of(days.Last.AddDays(1));

    private static ValueList<string> Words(IEnumerable<string?> ids) => ids.OfType<string>().Select(id => Say(id)).ToValueList();

    private static string? Clean(string? text) => text is null || PlainText.Clean(text) is not { Length: > 0 } clean ? null : clean;

    private static string? Lines(IEnumerable<string?> lines) => string.Join('\n', lines.Select(Clean).OfType<string>()) is { Length: > 0 } text ? text : null;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
