using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut;

/// <summary>An event on one line of a sheet.</summary>
internal static class EventLine
{
    /// <summary>
    /// "Mon 4 – Fri 8 Jan: National camp, no training" in the week in which it begins, "until Fri 8 Jan: National camp, no training"
    /// in each later one: nobody looks for a closed hall in the week before. Journeys say when they leave and when they are back.
    /// </summary>
    public static string Of(Event e, SeasonWeek week, YearWords words)
    {
        var days = e.Days.Length == 1 ? words.ShortDay(e.Days.First)
            : e.Days.First < week.Days.First ? Say("sheet.until", words.ShortDay(e.Days.Last))
            : Say("sheet.span", words.ShortDay(e.Days.First), words.ShortDay(e.Days.Last));
        var training = e.Training is { Value: 0 } ? new[] { Say("head-coach.no-training") } : [];
        return PlainText.Clean(Say("sheet.line", days, YearWords.Join([e.Title, .. YearWords.Details(e with { Training = null, Nights = null, Source = null }), .. Journey(e, words), .. training])));
    }

    /// <summary>What an event is on one day of a week, in full on the first of its days there, and the legs of its journey that leave on it.</summary>
    public static IEnumerable<string> On(Event e, DateOnly day, DaySpan week)
    {
        var isFirst = day == e.Days.First || day == week.First;
        // That all of it is possible goes without saying.
        var said = e.Training is { Value: 100 } ? e with { Training = null } : e;
        yield return PlainText.Clean(isFirst ? YearWords.Join([e.Title, .. YearWords.Details(said)]) : e.Title);
        foreach (var leg in (e.Legs ?? []).Where(leg => leg.Day == day)) yield return PlainText.Clean(Leg(leg));
    }

    private static IEnumerable<string> Journey(Event e, YearWords words)
    {
        if (e.Legs is not { Count: > 0 } legs) yield break;
        if (legs[0] is { Departs: { } departs } first) yield return Say("sheet.leaves", words.ShortDay(first.Day), departs.Iso());
        if (legs[^1] is { Arrives: { } arrives } last) yield return Say(legs.Count > 1 ? "sheet.back" : "sheet.arrives", words.ShortDay(last.ArrivalDay ?? last.Day), arrives.Iso());
    }

    // "13:00 Ostham to Skeldby, there 16:20".
    private static string Leg(Leg leg)
    {
        var way = (leg.From, leg.To) switch
        {
            ({ } from, { } to) => Say("calendar.leg", from, to),
            ({ } from, null) => Say("calendar.leg.from", from),
            (null, { } to) => Say("calendar.leg.to", to),
            _ => Say("sheet.leg"),
        };
        return YearWords.Join([leg.Departs is { } departs ? $"{departs.Iso()} {way}" : way, .. leg.Arrives is { } arrives ? new[] { Say("sheet.there", arrives.Iso()) } : []]);
    }
}
