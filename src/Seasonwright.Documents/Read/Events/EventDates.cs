using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>
/// All days of a list, decided together. The order of day and month is what the whole list shows, or is asked. Years that are not written
/// come from a title, from the season, from the other days of the list, or are asked.
/// </summary>
/// <param name="Readings">By line, in the order given; without days where none are written.</param>
/// <param name="Order">Null while it is asked.</param>
/// <param name="OrderLines">Lines that decided it; empty when none had to.</param>
/// <param name="Years">The years filled in; null when all are written, or each is the season's, or they are asked.</param>
internal sealed record EventDates(IReadOnlyList<DatedLine> Readings, DayOrder? Order, ValueList<int> OrderLines, SeasonYears? Years)
{
    /// <param name="named">The years a title names.</param>
    public static EventDates Read(IReadOnlyList<EventLine> lines, SeasonYears? named, EventReading options, Asker asker)
    {
        var dated = lines.Where(line => line.Span is not null).ToList();
        var written = dated.Select(line => new LineDate(line.Line, line.Span!.Written)).ToList();
        var hints = new DateHints(options.UsualOrder, named, options.Season, options.Today);
        var (order, orderLines, askOrder) = DateColumn.OrderOf(written, hints, asker);
        var window = named is { } years ? Window(years, options.Season, dated, order) : options.Season is { } season && Fits(season, dated, order) ? season : (DaySpan?)null;
        var fill = window is null ? YearFill.Of(written, order, hints, asker) : null;
        var next = 0;
        return new([.. lines.Select(line => line.Span is { } span ? Reading(span, next++) : new DatedLine(SpanReading.No(SpanDoubt.Unreadable), null))], order, orderLines, named ?? fill?.Season);

        DatedLine Reading(FoundSpan span, int index)
        {
            if (askOrder is not null && span.Written.Days.Any(day => day.IsSwappable)) return new(SpanReading.No(SpanDoubt.Order), askOrder);
            if (fill is null) return new(SpanYears.Read(span, window, order), null);
            if (!written[index].Written.LacksYear) return new(SpanYears.Read(span, null, order), null);
            return fill.YearOf(index) is { } year ? new(span.In(year, order ?? DayOrder.DayFirst), fill.Ask) : new(SpanReading.No(SpanDoubt.Year), fill.Ask ?? askOrder);
        }
    }

    // A list that starts after the summer runs on into the next one; of July and August in any other the season tells which year's they are.
    private static DaySpan Window(SeasonYears years, DaySpan? season, List<EventLine> dated, DayOrder? order)
    {
        if (!years.TwoYears) return new DaySpan(new(years.First, 1, 1), new(years.First, 12, 31));
        var all = new DaySpan(new(years.First, 7, 1), new(years.First + 1, 8, 31));
        if (dated.Count > 0 && SpanYears.Read(dated[0].Span!, all, order).From >= new DateOnly(years.First, 9, 1)) return new DaySpan(new(years.First, 9, 1), all.Last);
        return season is { } days && SeasonYears.Of(days) == years ? days : all;
    }

    // The list is of this season unless the years it writes are of another, or most days of the week it writes are.
    private static bool Fits(DaySpan season, List<EventLine> dated, DayOrder? order)
    {
        var readings = dated.Select(line => (Form: line.Span!.Form, Read: SpanYears.Read(line.Span, season, order))).ToList();
        var known = readings.Where(reading => reading.Form.Year is not null).Select(reading => reading.Read.Whole).OfType<DaySpan>().ToList();
        if (known.Count > 0 && !known.Exists(days => days.Overlaps(season))) return false;
        var named = readings.Where(reading => reading.Form is { Year: null, HasWeekday: true }).ToList();
        return named.Count < 3 || named.Count(reading => reading.Read.Doubt == SpanDoubt.Weekday) * 2 < named.Count;
    }
}

/// <summary>What the days of a line say.</summary>
/// <param name="Ask">Id of the list's own question that they wait for.</param>
internal readonly record struct DatedLine(SpanReading Read, string? Ask);
