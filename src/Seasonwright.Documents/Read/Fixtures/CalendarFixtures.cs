using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Documents.Read.Calendars;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>The matches of a calendar file.</summary>
internal static class CalendarFixtures
{
    public static ListLayout Layout(SourceText source, Asker asker)
    {
        var (entries, problem) = CalendarFile.Read(source);
        var (matches, skipped) = (new List<ListedMatch>(), new List<Skipped>());
        foreach (var entry in entries)
        {
            var asked = entry is { IsMatch: true, NamesTeams: false } ? CalendarFile.AskRound(entry, asker) : default(Asked?);
            if (entry.IsMatch && asked?.Answer is null or CalendarFile.AsMatch) matches.Add(Match(entry, asked));
            else if (asked is not null) skipped.Add(Skipped.Of(entry.Line, entry.Summary, asked.Value.Answer == CalendarFile.AsEvent ? "calendar-event" : "event-left-out"));
            else skipped.Add(Skipped.Of(entry.Line, entry.Summary, entry.Repeats ? "calendar-repeats" : "calendar-event"));
        }
        return new(matches, skipped, ValueList<HeadingUse>.Empty, null, null, problem is null ? [] : [problem]);
    }

    private static ListedMatch Match(CalendarEntry entry, Asked? asked) => new(entry.Line, entry.Summary)
    {
        Ask = asked is { IsOpen: true } open ? open.Id : "",
        SourceId = entry.Uid,
        Date = entry is { Day: { } day, LastDay: { } last } && entry.Starts is null ? $"{Text(day)} - {Text(last)}" : entry.Day is { } one ? Text(one) : "",
        KickOff = entry.Starts?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "",
        Pair = entry.NamesTeams ? entry.Heading : "",
        // A round against nobody known; what stands behind it counts only once it is said to be a match.
        Competition = entry.NamesTeams ? "" : asked is { IsOpen: true } ? entry.Summary : entry.Heading,
        Venues = entry.Place.Length > 0 ? [entry.Place] : [],
        Status = entry.IsCancelled ? "cancelled" : entry.IsTentative ? "provisional" : "",
        // An entry has a state of its own: what is written beside it counts for a condition only where it was said to be one.
        Remarks = asked is { IsOpen: false } ? entry.Behind : "",
        Notes = string.Join("; ", new[] { asked is null ? entry.Behind : null, entry.UnplacedTime, entry.Description }.Where(text => !string.IsNullOrEmpty(text))),
    };

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
