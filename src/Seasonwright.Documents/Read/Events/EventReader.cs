using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>Reads lists of breaks, exams, camps, tournaments, journeys, closed rooms and test days, as tables or as lines of prose. Never throws on content.</summary>
public static class EventReader
{
    public static EventList Read(SourceText source, EventReading options)
    {
        var table = CellTable.Read(source);
        var columns = table.Problems.Count == 0 && table.Delimiter is not null ? EventColumns.Of(table) : null;
        if (source.Problems.Count > 0 || (table.Problems.Count > 0 && columns is not null)) return Empty(source, source.Problems.Count > 0 ? source.Problems : table.Problems);
        var (asker, skipped) = (new Asker(options.Answers ?? Answers.None), new List<Skipped>());
        var lines = (columns is null ? EventProse.Lines(source, skipped) : EventTable.Lines(table, columns, skipped)).ToList();
        var named = skipped.Where(skip => skip.Kind == "event-title").Select(skip => SeasonYears.Find(skip.Text)).FirstOrDefault(years => years is not null);
        var season = named is { } years ? Days(years, lines) : options.Season;
        var (rows, tests) = (new List<EventRow>(), new List<TestDayRow>());
        foreach (var line in lines)
        {
            // The first row of a journey carries its days; the others are its legs.
            if (line.Leg is { Numbered: true } leg && lines.First(other => other.Leg?.Trip == leg.Trip) is var trip && trip.Line < line.Line)
            {
                skipped.Add(Skipped.Of(line.Line, line.Raw, "event-leg", trip.Line));
                continue;
            }
            if (HealthWords.In(line.Raw))
            {
                skipped.Add(Skipped.Of(line.Line, "", "event-health"));
                continue;
            }
            var read = line.Span is { } span ? SpanYears.Read(span, season, null) : SpanReading.No(SpanDoubt.Unreadable);
            var (from, to, state, ask) = Settled(line, read, season, asker);
            var asks = new ValueList<string>(ask is null ? [] : [ask]);
            var part = line.Part ?? read.Part;
            if (line.IsTest) tests.Add(new(line.Line, line.Title, from, to, read.Only, part, line.For, state, asks));
            else rows.Add(new(line.Line, line.Kind, line.Title, from, to, read.Only, part, line.For, Share(line.Share), line.Place, ValueList<Leg>.Empty, line.Remarks.Count == 0 ? null : string.Join("; ", line.Remarks), state, asks));
        }
        return new(source.Name, rows.ToValueList(), tests.ToValueList(), asker.Open, asker.Answered, skipped.OrderBy(skip => skip.Line).ToValueList(), ValueList<Problem>.Empty,
            new(source.Encoding, columns is null ? null : table.Delimiter, columns?.Heading is { } heading ? table.Rows[heading].Line : null, null, named));
    }

    // A list that starts after the summer runs on into the next one; otherwise July and August may be either year's.
    private static DaySpan Days(SeasonYears years, List<EventLine> lines)
    {
        var all = years.TwoYears ? new DaySpan(new(years.First, 7, 1), new(years.First + 1, 8, 31)) : new DaySpan(new(years.First, 1, 1), new(years.First, 12, 31));
        var first = lines.Select(line => line.Span).OfType<FoundSpan>().Select(span => SpanYears.Read(span, all, null).From).FirstOrDefault();
        return years.TwoYears && first >= new DateOnly(years.First, 9, 1) ? new DaySpan(new(years.First, 9, 1), all.Last) : all;
    }

    // A share of training in a column of its own, whole per cent; anything else stays unknown.
    private static Percent? Share(string? cell) =>
        int.TryParse(cell?.TrimEnd('%').Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var share) && share <= SetEvent.MostTraining ? new Percent(share) : null;

    private static (DateOnly? From, DateOnly? To, RowState State, string? Ask) Settled(EventLine line, SpanReading read, DaySpan? season, Asker asker)
    {
        if (read.Doubt == SpanDoubt.None) return (read.From, read.To, read.IsTentative ? RowState.Provisional : RowState.Certain, null);
        var asked = asker.Ask("days", $"{Spelling.Fold(line.Title)}|{Spelling.Fold(line.When)}", [line.Line], read.Choices.Select(days => new AnswerOption($"{days}", $"{days}")),
            [line.Title, line.When], null, answer => DaySpanText.Read(answer, season).Days is not null);
        if (asked.Answer is { } answer && (read.Choices.Select(days => (DaySpan?)days).FirstOrDefault(days => $"{days}" == answer) ?? DaySpanText.Read(answer, season).Days) is { } days) return (days.First, days.Last, RowState.Certain, null);
        return (read.From, read.To, read.Doubt is SpanDoubt.WholeMonth or SpanDoubt.WeekNumber ? RowState.Provisional : RowState.Waiting, asked.Id);
    }

    private static EventList Empty(SourceText source, ValueList<Problem> problems) =>
        new(source.Name, ValueList<EventRow>.Empty, ValueList<TestDayRow>.Empty, ValueList<Question>.Empty, ValueList<Answered>.Empty, ValueList<Skipped>.Empty, problems, new(source.Encoding, null, null, null, null));
}
