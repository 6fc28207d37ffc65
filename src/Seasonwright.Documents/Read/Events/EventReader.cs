using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Calendars;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Read.Events;

/// <summary>
/// Reads lists of breaks, exams, camps, tournaments, journeys, closed rooms and test days, as tables or as lines of prose. Never throws on content;
/// what a list does not say is asked rather than guessed, and health details are held back.
/// </summary>
public static class EventReader
{
    public static EventList Read(SourceText source, EventReading options) =>
        ListKinds.Elsewhere(source, ListKind.Events, ListKind.Calendar) is { } problem ? Refused(source, new([problem])) : Understand(source, options);

    /// <summary>Reads a list whatever its kind.</summary>
    internal static EventList Understand(SourceText source, EventReading options)
    {
        var (asker, skipped) = (new Asker(options.Answers ?? Answers.None), new List<Skipped>());
        var isCalendar = CalendarFile.Is(source);
        var table = isCalendar ? CalendarEvents.Table(source, asker, skipped) : CellTable.Read(source);
        if (isCalendar && table.Problems.Count > 0) return Refused(source, table.Problems);
        // A stray quotation mark breaks a table; lines of prose may have one.
        if (source.Problems.Count > 0 || table.Problems.Count > 0 && CellTable.IsIn(source)) return Refused(source, table.Problems);
        if (!isCalendar && IsProgramText(source)) return Refused(source, new([Problem.Of("program-text", source.Name, 1, null)]));
        var columns = table.Problems.Count == 0 && table.Delimiter is not null ? EventColumns.Of(table) : null;
        if (FixtureHeadings(table, columns) is { } headings) return Refused(source, new([Problem.Of("fixtures-here", source.Name, headings.Line, null)]));
        var lines = Taken((columns is null ? EventProse.Lines(source, skipped) : EventTable.Lines(table, columns, skipped)).ToList(), skipped);
        var named = skipped.Where(skip => skip.Kind == "event-title").OrderBy(skip => skip.Line).Select(skip => SeasonYears.Find(skip.Text)).FirstOrDefault(years => years is not null);
        var dates = EventDates.Read(lines, named, options, asker);
        var drafts = lines.Zip(dates.Readings, Draft).ToList();
        Journeys.Join(drafts, skipped);
        Repeats(drafts, skipped);
        EventQuestions.Ask(drafts, options, dates.Order, asker, skipped);
        if (drafts.Count == 0 && !skipped.Exists(skip => skip.Kind is "event-health" or "event-off" or "event-left-out")) return Refused(source, new([Problem.Of("no-events", source.Name, null, null)]));
        return new(source.Name, drafts.Where(draft => !draft.Line.IsTest).Select(draft => draft.Row()).ToValueList(), drafts.Where(draft => draft.Line.IsTest).Select(draft => draft.TestDayRow()).ToValueList(),
            asker.Open, asker.Answered, skipped.OrderBy(skip => skip.Line).ToValueList(), ValueList<Problem>.Empty,
            new(source.Encoding, columns is null ? null : table.Delimiter, columns?.Heading is { } heading ? table.Rows[heading].Line : null, dates.Order, dates.OrderLines, dates.Years));
    }

    /// <summary>A web page, a calendar or data for programs, not lines that people write.</summary>
    internal static bool IsProgramText(SourceText source)
    {
        var start = source.Text.TrimStart();
        return start.StartsWith('<') || start.StartsWith('{') || start.StartsWith("[{", StringComparison.Ordinal) || start.StartsWith("BEGIN:", StringComparison.OrdinalIgnoreCase);
    }

    // Headings that say who plays and no event: where what would be the title is a side of a match, or where no column is known as an event's.
    private static CellRow? FixtureHeadings(CellTable table, EventColumns? columns) =>
        columns?.Heading is { } heading ? HeadingWords.RoleOf(columns.Cell(table.Rows[heading], EventColumn.Title)) is ColumnRole.Opponent or ColumnRole.Home or ColumnRole.Away ? table.Rows[heading] : null
        : HeadedList.Headings(table) is { } found && HeadedList.NamesOpponents(found.Row) ? found.Row : null;

    // Without the lines that are called off, without health details and without a spreadsheet's errors: of a line that still tells an event only the cell goes.
    private static List<EventLine> Taken(List<EventLine> lines, List<Skipped> skipped)
    {
        var taken = new List<EventLine>();
        foreach (var line in lines)
        {
            if (HealthWords.In(line.Title) || HealthWords.In(line.When)) skipped.Add(Skipped.Of(line.Line, "", "event-health"));
            else if (EventWords.IsCalledOff(line.Title) || line.Remarks.Any(EventWords.IsCalledOff)) skipped.Add(Skipped.Of(line.Line, line.Raw, "event-off"));
            else taken.Add(Without(Without(line, HealthWords.In, "event-health-words", skipped), Formula.IsError, "event-error", skipped));
        }
        return taken;
    }

    private static EventLine Without(EventLine line, Func<string, bool> goes, string kind, List<Skipped> skipped)
    {
        string? Kept(string? cell) => cell is not null && goes(cell) ? null : cell;
        var kept = line with { Remarks = [.. line.Remarks.Where(remark => !goes(remark))], For = Kept(line.For), Place = Kept(line.Place), Part = Kept(line.Part) };
        if (kept.Remarks.Count == line.Remarks.Count && kept.For == line.For && kept.Place == line.Place && kept.Part == line.Part) return line;
        skipped.Add(Skipped.Of(line.Line, "", kind));
        return kept;
    }

    private static EventDraft Draft(EventLine line, DatedLine dated)
    {
        var draft = new EventDraft(line, dated.Read);
        if (dated.Ask is not { } ask) return draft;
        draft.Ask.Add(ask);
        // Days that only an offered year gives.
        if (draft.State == RowState.Certain) draft.State = RowState.Provisional;
        return draft;
    }

    // A repeat of a row is one event and is told; other days, parts or people make another event.
    private static void Repeats(List<EventDraft> drafts, List<Skipped> skipped)
    {
        var first = new Dictionary<string, EventDraft>(StringComparer.Ordinal);
        foreach (var draft in drafts.ToList())
        {
            var key = string.Join('\n', Spelling.Fold(draft.Title), draft.From, draft.To, draft.Read.Doubt == Spans.SpanDoubt.None ? "" : Spelling.Fold(draft.Line.When), draft.Part, Spelling.Fold(draft.For ?? ""), Spelling.Fold(draft.Line.Place ?? ""));
            if (first.TryAdd(key, draft)) continue;
            drafts.Remove(draft);
            if (draft.Line.Line != first[key].Line.Line) skipped.Add(Skipped.Of(draft.Line.Line, draft.Line.Raw, "event-repeat", first[key].Line.Line));
        }
    }

    private static EventList Refused(SourceText source, ValueList<Problem> problems) =>
        new(source.Name, ValueList<EventRow>.Empty, ValueList<TestDayRow>.Empty, ValueList<Question>.Empty, ValueList<Answered>.Empty, ValueList<Skipped>.Empty, problems, new(source.Encoding, null, null, null, ValueList<int>.Empty, null));
}
