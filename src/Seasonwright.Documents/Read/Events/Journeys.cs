using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Spans;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Events;

/// <summary>Rows of one journey: the first carries it, the others are its legs.</summary>
internal static class Journeys
{
    private const RegexOptions Plain = RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    // "one hour behind", "2 h ahead", "zwei Stunden zurück"
    private static readonly Regex Shift = new(@"\b(?<n>\d{1,2}|half an|an|one|two|three|four|five|six|seven|eight|nine|ten|eine|zwei|drei|vier|funf|sechs|sieben|acht|neun|zehn) ?(?:h|hrs?|hours?|stunden?|std) (?<way>behind|back|earlier|ahead|forward|later|zuruck|voraus|vor)\b", Plain);

    private static readonly string[] Numbers = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
    private static readonly string[] Zahlen = ["eine", "zwei", "drei", "vier", "funf", "sechs", "sieben", "acht", "neun", "zehn"];

    /// <summary>Rows that are only legs go into the draft of their journey, which lasts until the last of them.</summary>
    public static void Join(List<EventDraft> drafts, List<Skipped> skipped)
    {
        foreach (var rows in drafts.Where(draft => draft.Line.Leg is not null).GroupBy(draft => draft.Line.Leg!.Trip ?? $"\n{draft.Line.Line}", StringComparer.OrdinalIgnoreCase).Select(rows => rows.ToList()).ToList())
        {
            var trip = rows[0];
            trip.Legs.AddRange(rows);
            foreach (var leg in rows.Skip(1))
            {
                drafts.Remove(leg);
                skipped.Add(Skipped.Of(leg.Line.Line, leg.Line.Raw, "event-leg", trip.Line.Line));
            }
            if (rows.Count > 1) trip.Notes.Clear();
            if (rows.Count > 1) trip.Notes.AddRange(rows.Select((row, i) => (row.Line.Remarks, i)).Where(row => row.Remarks.Count > 0).Select(row => Sentences.Say("note.leg", row.i + 1, string.Join("; ", row.Remarks))));
            // The first row may leave the days to the others.
            if (trip.Line.Span is null && rows.Find(row => row.Read.Days is not null) is { } dated) trip.Take(dated.Read);
            if (trip.Read.Days is { } days && rows.Select(row => row.Read.Days?.Last).Append(LegsOf(trip)[^1].ArrivalDay).Max() is { } last && last > days.Last) trip.Take(trip.Read with { To = last });
        }
    }

    /// <summary>The legs of a journey, in order; empty where no row names a place.</summary>
    public static ValueList<Leg> LegsOf(EventDraft trip)
    {
        var legs = new List<Leg>();
        foreach (var (cells, row) in trip.Legs.Select(row => (row.Line.Leg!, row)))
        {
            var (departs, arrives) = (Time(cells.Departs), Time(cells.Arrives));
            var before = legs.LastOrDefault();
            var day = row.Read.Days?.First ?? before?.ArrivalDay ?? before?.Day ?? trip.From!.Value;
            // Nobody leaves before they have come.
            if (row.Read.Days is null && departs < before?.Arrives) day = day.AddDays(1);
            var shift = ShiftOf(row.Line.Remarks) ?? Back(legs, cells);
            var isNight = departs is { } dep && arrives is { } arr && arr.ToTimeSpan() - TimeSpan.FromHours((double)(shift ?? 0)) < dep.ToTimeSpan();
            legs.Add(new Leg(day, Said(cells.From), Said(cells.To), departs, arrives, isNight ? day.AddDays(1) : null, shift));
        }
        return legs.ToValueList();
    }

    // The way back turns the clock back.
    private static decimal? Back(List<Leg> legs, LegCells cells) => -legs.LastOrDefault(leg => leg.ZoneShift is not null && leg.From is { } from && leg.To is { } to && Spelling.Same(from, cells.To) && Spelling.Same(to, cells.From))?.ZoneShift;

    private static decimal? ShiftOf(IEnumerable<string> remarks)
    {
        foreach (var match in remarks.Select(remark => Shift.Match(SpanToken.Fold(remark))).Where(match => match.Success))
        {
            var word = match.Groups["n"].Value;
            var hours = int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var figure) ? figure : word == "an" ? 1 : word == "half an" ? 0.5m : 1 + Math.Max(Array.IndexOf(Numbers, word), Array.IndexOf(Zahlen, word));
            return match.Groups["way"].Value is "ahead" or "forward" or "later" or "voraus" or "vor" ? hours : -hours;
        }
        return null;
    }

    private static TimeOnly? Time(string cell) => TimeText.Read(cell) is { Sense: TimeSense.Known or TimeSense.Midnight, Time: { } time } ? time : null;

    private static string? Said(string cell) => cell.Length == 0 ? null : cell;
}
