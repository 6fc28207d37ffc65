using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Evaluation;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Read.Calendars;

/// <summary>
/// A calendar file (iCalendar, RFC 5545) as a list. Of entries that repeat only breaks, exams and the like with an end are unrolled, each time they
/// come an entry of its own; the others are told: practices are the head coach's, and a rule can repeat without end.
/// </summary>
internal static class CalendarFile
{
    /// <summary>Times that one entry may come; a year of days has 366.</summary>
    private const int MostTimes = 366;

    /// <summary>Steps of a rule that find no day (the 30th of every February) before it is given up.</summary>
    private const int MostMissed = 5_000;

    public static bool Is(SourceText source) => source.Text.AsSpan().TrimStart().StartsWith("BEGIN:VCALENDAR", StringComparison.OrdinalIgnoreCase);

    /// <summary>Its entries by the line they begin on, or what is wrong with it.</summary>
    public static (IReadOnlyList<CalendarEntry> Entries, Problem? Problem) Read(SourceText source)
    {
        try
        {
            if (Calendar.Load(source.Text) is not { } calendar) return ([], Broken(source));
            var starts = source.Lines.Select((line, at) => (line, at)).Where(line => line.line.Trim().Equals("BEGIN:VEVENT", StringComparison.OrdinalIgnoreCase)).Select(line => line.at + 1).ToList();
            var zone = Zone(calendar);
            // A file whose entries cannot be counted is not the one the reader has read.
            if (calendar.Events.Count != starts.Count) return ([], Broken(source));
            var entries = calendar.Events.Zip(starts, (entry, line) => (Entry: entry, Read: Entry(entry, line, zone))).ToList();
            // A time that was moved stands as an entry of its own beside its series, and goes where that goes.
            var moved = calendar.Events.Where(entry => entry.RecurrenceIdentifier is not null).ToLookup(entry => entry.Uid ?? "", entry => entry.RecurrenceIdentifier!.StartTime, StringComparer.Ordinal);
            var unrolled = entries.ConvertAll(entry => Repeats(entry.Entry) ? Times(entry.Entry, entry.Read, zone, moved) ?? [entry.Read with { Repeats = true }] : [entry.Read]);
            var told = unrolled.SelectMany(times => times).Where(entry => entry.Repeats).Select(entry => entry.Uid).ToHashSet(StringComparer.Ordinal);
            return ([.. unrolled.Zip(entries).SelectMany(both => both.First.Select(time => time with { Repeats = time.Repeats || both.Second.Entry.RecurrenceIdentifier is not null && told.Contains(time.Uid) }))], null);
        }
        // The library says in many ways that it cannot read a text.
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            return ([], Broken(source));
        }
    }

    /// <summary>Answers of <see cref="AskRound"/>.</summary>
    public const string AsMatch = "match", AsEvent = "event", LeftOut = "leave-out";

    /// <summary>"Cup finals weekend": a match, or days that are taken.</summary>
    public static Asked AskRound(CalendarEntry entry, Asker asker) => asker.Ask(
        "finals", entry.Uid.Length > 0 ? entry.Uid : Spelling.Fold(entry.Summary), [entry.Line], new[] { AsMatch, AsEvent, LeftOut }.Select(option => Asker.Option("finals", option)), [entry.Line, entry.Summary]);

    private static Problem Broken(SourceText source) => Problem.Of("calendar-broken", source.Name, null, null);

    private static bool Repeats(CalendarEvent entry) => entry.RecurrenceRule is not null || entry.RecurrenceDates.GetAllDates().Any();

    /// <summary>Each time an entry comes, without those that were moved or called off (3.8.5); null where it is to be told only.</summary>
    private static List<CalendarEntry>? Times(CalendarEvent entry, CalendarEntry first, string? zone, ILookup<string, CalDateTime> moved)
    {
        var isEvent = EventWords.Of(first.Summary) is (EventKind.Holiday or EventKind.Exams or EventKind.Camp or EventKind.Tournament or EventKind.NationalTeamWindow or EventKind.RoomClosed, false);
        if (!isEvent || first.IsMatch || first.Day is not { } from || entry.RecurrenceRule is { } rule && (rule is { Until: null, Count: null } || rule.Frequency < FrequencyType.Daily)) return null;
        try
        {
            var days = entry.GetOccurrences(null, new EvaluationOptions { MaxUnmatchedIncrementsLimit = MostMissed }).Take(MostTimes + 1).Select(time => time.Period.StartTime)
                .Where(start => !moved[first.Uid].Contains(start)).Select(start => At(start, zone).Day!.Value).ToList();
            return days.Count > MostTimes ? null : days.ConvertAll(day => first with { Day = day, LastDay = first.LastDay?.AddDays(day.DayNumber - from.DayNumber) });
        }
        // A rule whose days do not come, or come behind the end of the calendar.
        catch (Exception error) when (error is EvaluationException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    private static CalendarEntry Entry(CalendarEvent entry, int line, string? zone)
    {
        var start = entry.Start is { } time ? At(time, zone) : (null, null);
        var end = End(entry) is { } named ? At(named, zone) : (null, null);
        // The end is not part of it (3.6.1): of whole days it is the day after the last, and what ends at midnight ends with the day before.
        var last = end.Day is { } day ? (end.Time is null && entry.Start?.HasTime == false || end.Time == TimeOnly.MinValue && day > start.Day ? day.AddDays(-1) : day) : start.Day;
        var summary = Spelling.Tidy(entry.Summary ?? "");
        return new(line, entry.Uid ?? "", start.Day, last > start.Day ? last : null, start.Time, end.Time, summary, Spelling.Tidy(entry.Location ?? ""), Spelling.Tidy(entry.Description ?? ""),
            (entry.Status ?? "").ToUpperInvariant(), [.. entry.Categories ?? []], false,
            entry.Start is { HasTime: true } written && start.Time is null ? FormattableString.Invariant($"{written.Value:HH:mm} UTC") : null);
    }

    // Whole days last whole days or weeks (3.6.1); of any other length only the first is sure.
    private static CalDateTime? End(CalendarEvent entry) => entry.End ?? (entry is { Start: { } start, Duration: { } length } && (start.HasTime || !length.HasTime) ? start.Add(length) : null);

    /// <summary>The clock of the venue: a zone's own time as it is written, UTC on the clock of the calendar; only the day where that is not known.</summary>
    private static (DateOnly? Day, TimeOnly? Time) At(CalDateTime time, string? zone)
    {
        var day = DateOnly.FromDateTime(time.Value);
        if (!time.HasTime) return (day, null);
        if (!time.IsUtc) return (day, TimeOnly.FromDateTime(time.Value));
        if (zone is null) return (day, null);
        var (local, _) = ZoneClock.Show(new DateTimeOffset(time.Value, TimeSpan.Zero), zone);
        return (DateOnly.FromDateTime(local), TimeOnly.FromDateTime(local));
    }

    /// <summary>The zone the calendar names for itself, else the only one that its entries are in.</summary>
    private static string? Zone(Calendar calendar)
    {
        var named = calendar.Properties.Get<object>("X-WR-TIMEZONE")?.ToString();
        if (Named(named) is { } own) return own;
        var zones = calendar.Events.Select(entry => entry.Start).OfType<CalDateTime>().Where(start => start is { HasTime: true, IsUtc: false, TzId: not null }).Select(start => start.TzId!).Distinct(StringComparer.Ordinal).Take(2).ToList();
        return zones is [var only] ? Named(only) : null;
    }

    // Some calendars name zones as Windows does; their list is the Unicode CLDR's.
    private static string? Named(string? zone) => zone is null || KickOff.IsZone(zone) ? zone : TimeZoneInfo.TryConvertWindowsIdToIanaId(zone, out var iana) && KickOff.IsZone(iana) ? iana : null;
}

/// <summary>An entry of a calendar, in the words it has.</summary>
/// <param name="Line">Where it begins, 1 is the first.</param>
/// <param name="Day">Null where it names none.</param>
/// <param name="LastDay">Null for one day.</param>
/// <param name="Starts">On the venue's clock; null for whole days and where the clock is not known.</param>
/// <param name="Status">In capitals, as the standard has it; empty where it says none.</param>
/// <param name="UnplacedTime">A time whose clock here is not known: "16:00 UTC".</param>
internal sealed record CalendarEntry(
    int Line, string Uid, DateOnly? Day, DateOnly? LastDay, TimeOnly? Starts, TimeOnly? Ends, string Summary, string Place, string Description,
    string Status, IReadOnlyList<string> Categories, bool Repeats, string? UnplacedTime)
{
    public bool IsCancelled => Status == "CANCELLED";

    public bool IsTentative => Status == "TENTATIVE";

    /// <summary>Who plays, without what is said behind it: "A – B; Cup, round of 16" and "A – B (time to be fixed)" are A – B.</summary>
    public string Heading => Split().Heading;

    /// <summary>What stands behind the heading.</summary>
    public string Behind => Split().Behind;

    /// <summary>Whether it names two teams, calls itself a match, or names a round of a cup.</summary>
    public bool IsMatch => !Repeats && (
        Categories.Any(category => HeadingWords.RoleOf(category) == ColumnRole.Match && !string.Equals(category, "event", StringComparison.OrdinalIgnoreCase))
        || NamesTeams || RoundText.InHeading(Summary) is not null);

    /// <summary>Whether the heading says who plays: two teams, or one with a mark before it ("at Brovik").</summary>
    public bool NamesTeams => PairText.Read(Heading) is ({ Opponent: null } or { Venue: not null } or { Versus: true }) && !IsEventSomewhere;

    // "Camp at Skagrund", "Exams at school": no team is called so.
    private bool IsEventSomewhere => Heading.IndexOf(" at ", StringComparison.OrdinalIgnoreCase) is var at and > 0 && EventWords.Of(Heading[..at]) is (not EventKind.Other, _) or (_, true);

    private (string Heading, string Behind) Split()
    {
        var (heading, behind) = Summary.IndexOf(';', StringComparison.Ordinal) is var cut and > 0 ? (Summary[..cut].Trim(), Summary[(cut + 1)..].Trim()) : (Summary, "");
        // A mark such as (A) stays: it says where.
        return behind.Length == 0 && heading.EndsWith(')') && heading.LastIndexOf('(') is var open and > 0 && VenueText.Behind(heading) is null
            ? (heading[..open].Trim(), heading[(open + 1)..^1].Trim()) : (heading, behind);
    }
}
