using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Names;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>Makes matches of the rows that hold them, and asks what a workbook leaves open. Until it is answered the weaker form holds.</summary>
internal sealed class SheetQuestions(Asker asker, Legend legend, List<LeftOut> leftOut, WeekGrid weeks, List<ListedHere> lists, SheetMap map)
{
    // Weeks; the same opponent at the same place within them may be one match that was moved.
    private const int Near = 6;

    private const int MostCompared = 500;

    private static readonly string[] HomeOrUnknown = ["home", "unknown"], Venues = ["home", "away", "unknown"];

    private readonly List<SheetRow> own = [];

    private readonly List<Draft> drafts = [];

    public List<SheetRow> Ask(List<SheetRow> rows)
    {
        var details = new MatchDetails(rows);
        foreach (var row in rows.Where(row => row.Role == RowRole.Matches)) Read(row, details);
        own.AddRange(rows.Where(row => row.Role == RowRole.Details).Select(row => RestOf(row, details.Rest(row))).Where(row => row.Entries.Count > 0));
        AskDays();
        AskVenues(rows);
        AskAlike();
        foreach (var draft in drafts) AskOne(draft);
        AskLoads(rows);
        foreach (var row in rows) AskRow(row, rows);
        return [.. rows.Select(row => row with { Matches = drafts.Where(draft => draft.Row == row.Key && draft.IsMatch).SelectMany(draft => Enumerable.Repeat(draft.Match(), draft.Times)).ToValueList() }), .. own, .. lists.Select(list => list.Row(weeks, map))];
    }

    private void Read(SheetRow row, MatchDetails details)
    {
        if (row.Entries.Count > 0 && row.Entries.All(entry => Exposures.Of(entry.Text) is not null) && lists.Count > 0)
        {
            var alone = row.Entries.Where(entry => !lists.Any(list => list.List.Rows.Any(match => match.Day is { } day && entry.Days.Contains(day)))).ToList();
            var (all, marked) = (lists.Sum(list => list.List.Rows.Count), row.Entries.Count - alone.Count);
            var asked = asker.Ask("sheet-marks", "", Lines(row), [Asker.Option("sheet-marks", "list"), Asker.Option("sheet-marks", "each")], [row.Label, row.Entries.Count, lists[0].Sheet.Name, all, all - marked], "list", name: "Q-x");
            // A mark names nobody: where the list has a match already, it adds nothing.
            if (asked.Answer == "each") drafts.AddRange(alone.Select(entry => new Draft(row, entry, null)));
            else leftOut.Add(LeftOut.Of(row.Sheet, row.Key, row.Label, "marks"));
            return;
        }
        var others = new List<SheetEntry>();
        foreach (var (entry, part) in row.Entries.SelectMany(Parts))
        {
            var cell = MatchCell.Read(entry.Text, entry.Days, legend);
            if (cell is null && Exposures.Of(entry.Text) is null)
            {
                // What is neither a match nor says that there is none stays the coach's own.
                if (ListWords.IsBye(entry.Text) || TimeText.IsUnknown(entry.Text)) leftOut.Add(LeftOut.Of(row.Sheet, entry.Cell.ToString(), entry.Text, "no-match"));
                else others.Add(entry);
                continue;
            }
            if (cell is not null) cell = details.Complete(cell, row, entry);
            // The same match once more: the list has its day and its time.
            if (lists.Exists(list => list.Has(cell?.Opponent, entry.Days)))
            {
                leftOut.Add(LeftOut.Of(row.Sheet, entry.Cell.ToString(), entry.Text, "listed"));
                continue;
            }
            var days = cell is null || cell.Written is not null || cell.Weekdays.Count == 0 ? [null] : cell.Weekdays.Select(weekday => OnlyDay(entry.Days, weekday)).ToList();
            foreach (var day in days) drafts.Add(new Draft(row, entry, cell) { Part = part, Day = day ?? (entry.Days.Length == 1 ? entry.Days.First : null), IsOneOf = days.Count });
        }
        if (others.Count > 0) own.Add(RestOf(row, others));
    }

    // "Wed Kaldmere (H)" over "Sun Ulverstad (A)": two matches in one cell, where each line is one on its own.
    private IEnumerable<(SheetEntry Entry, int Part)> Parts(SheetEntry entry) =>
        entry.Lines.Count > 1 && entry.Lines.All(line => MatchCell.Read(line, entry.Days, legend) is { Opponent: not null } match && (match.Venue is not null || match.Weekdays.Count > 0 || match.Written is not null || match.KickOff is not null))
            ? entry.Lines.Select((line, i) => (entry with { Text = line, Lines = new([line]) }, i)) : [(entry, 0)];

    private static SheetRow RestOf(SheetRow row, IEnumerable<SheetEntry> entries) => row with { Key = $"{row.Key}+", Role = RowRole.Own, Entries = entries.ToValueList() };

    private static DateOnly? OnlyDay(DaySpan days, DayOfWeek weekday) => days.Days().Where(day => day.DayOfWeek == weekday).ToList() is [var only] ? only : null;

    private void AskDays()
    {
        foreach (var draft in drafts.Where(draft => draft.Cell?.Written is not null)) AskWritten(draft);
        var open = drafts.Where(draft => draft.Day is null && draft.Ask.Count == 0).ToList();
        if (open.Count == 0) return;
        var asked = asker.Ask("sheet-day", "", open.Select(draft => draft.Entry.Cell.Row), [Asker.Option("sheet-day", "saturday"), Asker.Option("sheet-day", "sunday"), Asker.Option("sheet-day", "unknown")],
            [open.Count, open[0].Entry.Text], takes: answer => CalendarWords.Weekday(answer) is not null, name: "Q-day");
        foreach (var draft in open)
        {
            if (asked.IsOpen) draft.Ask.Add(asked.Id);
            else if (CalendarWords.Weekday(asked.Answer!) is { } weekday) draft.Day = OnlyDay(draft.Entry.Days, weekday);
        }
    }

    // "Wed 10/2": the reading whose weekday fits, and it should lie in the week it stands in.
    private void AskWritten(Draft draft)
    {
        var written = draft.Cell!.Written!.First;
        var years = written.Year is { } own ? [own] : Enumerable.Range(weeks.FirstDay.Year, weeks.Span.Last.Year - weeks.FirstDay.Year + 1);
        var readings = years.SelectMany(year => new[] { DayOrder.DayFirst, DayOrder.MonthFirst }.Select(order => written.In(year, order))).OfType<DateOnly>().Where(weeks.Holds).Distinct().ToList();
        var fitting = readings.Where(day => written.Weekday is null || day.DayOfWeek == written.Weekday).ToList();
        if (fitting.Where(draft.Entry.Days.Contains).ToList() is [var inside])
        {
            draft.Day = inside;
            return;
        }
        var here = written.Weekday is { } weekday ? OnlyDay(draft.Entry.Days, weekday) : null;
        var choices = fitting.Concat(readings).Append(here ?? draft.Entry.Days.First).Distinct().Take(4).ToList();
        var asked = asker.Ask("sheet-other-week", Subject(draft), [draft.Entry.Cell.Row], choices.Select(day => new AnswerOption($"{day:yyyy-MM-dd}", Sentences.Say("days.one", day))),
            [draft.Entry.Text, draft.Entry.Days.First, draft.Entry.Days.Last], takes: answer => Iso(answer) is not null, name: "Q-outofweek");
        if (asked.IsOpen) (draft.IsWritten, draft.Day) = (false, null);
        else draft.Day = Iso(asked.Answer!);
        if (asked.IsOpen) draft.Ask.Add(asked.Id);
    }

    private static DateOnly? Iso(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    // Where away is marked and home never is, the rest may be home; elsewhere a match without a mark is asked by itself.
    private void AskVenues(List<SheetRow> rows)
    {
        foreach (var sheet in rows.Select(row => row.Sheet).Distinct(StringComparer.Ordinal))
        {
            var here = drafts.Where(draft => draft.Source.Sheet == sheet && draft.Cell is { IsConditional: false, IsTournament: false }).ToList();
            var open = here.Where(draft => draft.Venue is null).ToList();
            if (open.Count == 0) continue;
            var awayOnly = here.Any(draft => draft.Venue == Venue.Away) && here.All(draft => draft.Venue is null or Venue.Away);
            foreach (var group in awayOnly ? [open] : open.Select(draft => new List<Draft> { draft }))
            {
                var asked = asker.Ask(awayOnly ? "sheet-home" : "sheet-venue", awayOnly ? "" : Subject(group[0]), group.Select(draft => draft.Entry.Cell.Row), (awayOnly ? HomeOrUnknown : Venues).Select(option => Asker.Option("sheet-venue", option)),
                    [group[0].Entry.Text, group.Count], awayOnly ? "home" : null, name: awayOnly ? "Q-home" : "Q-venue");
                foreach (var draft in group)
                {
                    if (asked.IsOpen) draft.Ask.Add(asked.Id);
                    else draft.Venue = asked.Answer switch { "home" => Venue.Home, "away" => Venue.Away, _ => null };
                }
            }
        }
    }

    private void AskAlike()
    {
        // Beyond any season: comparing each with each would take minutes.
        if (drafts.Count > MostCompared) return;
        var names = drafts.Select(draft => draft.Opponent).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        for (var i = 0; i < names.Count; i++)
        {
            for (var j = i + 1; j < names.Count; j++)
            {
                if (!NameLikeness.AreAlike(names[i], names[j])) continue;
                var asked = asker.Ask("spelling", $"{Spelling.Fold(names[i])}|{Spelling.Fold(names[j])}", [], [Asker.Option("spelling", "one", names[i]), Asker.Option("spelling", "two")], [names[i], names[j]]);
                foreach (var draft in drafts.Where(draft => draft.Opponent == names[j]))
                {
                    if (asked.IsOpen) draft.Ask.Add(asked.Id);
                    else if (asked.Answer == "one") draft.Opponent = names[i];
                }
            }
        }
        for (var i = 0; i < drafts.Count; i++)
        {
            if (drafts[i].Opponent is null || drafts[i].IsOneOf > 1 || drafts[i].Cell is { IsTournament: true } or { MovedTo: not null }) continue;
            var twin = drafts.Skip(i + 1).FirstOrDefault(other => other.Entry.Cell != drafts[i].Entry.Cell && other.Cell is { IsTournament: false } && Spelling.Same(other.Opponent ?? "", drafts[i].Opponent!) && other.Venue == drafts[i].Venue
                && other.Entry.Days.First.DayNumber - drafts[i].Entry.Days.First.DayNumber is > 0 and <= 7 * Near);
            // Who is met at the same place again and again is simply met often.
            if (twin is null || drafts.Count(other => Spelling.Same(other.Opponent ?? "", drafts[i].Opponent!) && other.Venue == drafts[i].Venue) > 2) continue;
            var asked = asker.Ask("sheet-twice", Subject(drafts[i]), [drafts[i].Entry.Cell.Row, twin.Entry.Cell.Row], [Asker.Option("sheet-twice", "two"), Asker.Option("sheet-twice", "moved")], [drafts[i].Entry.Text, drafts[i].Entry.Days.First, twin.Entry.Days.First], "two", name: "Q-twice");
            if (asked.IsOpen) foreach (var draft in new[] { drafts[i], twin }) draft.Ask.Add(asked.Id);
            else if (asked.Answer == "moved") drafts[i].IsMoved = true;
        }
    }

    private void AskOne(Draft draft)
    {
        if (draft.Cell is not { } cell) return;
        void Keep(Asked asked)
        {
            if (asked.IsOpen) draft.Ask.Add(asked.Id);
        }
        int[] line = [draft.Entry.Cell.Row];
        if (draft.IsOneOf > 1 && drafts.First(other => other.Entry == draft.Entry) == draft)
        {
            var asked = asker.Ask("sheet-two", Subject(draft), line, [Asker.Option("sheet-two", "two"), Asker.Option("sheet-two", "tournament")], [draft.Entry.Text], "two", name: "Q-two");
            foreach (var other in drafts.Where(other => other.Entry == draft.Entry))
            {
                if (asked.IsOpen) other.Ask.Add(asked.Id);
                else if (asked.Answer == "tournament") other.IsTournament = true;
            }
        }
        if (cell.MovedTo is { } target)
        {
            var day = new[] { weeks.FirstDay.Year, weeks.Span.Last.Year }.Select(year => target.First.In(target.First.Year ?? year, DayOrder.DayFirst)).FirstOrDefault(day => day is { } found && weeks.Holds(found));
            var asked = asker.Ask("sheet-moved", Subject(draft), line, [Asker.Option("sheet-moved", "one", day), Asker.Option("sheet-moved", "two")], [draft.Entry.Text], "one", name: "Q-moved");
            draft.IsMoved = asked.IsOpen || asked.Answer == "one";
            // Where the new day has no match of its own, this is it.
            if (draft.IsMoved && day is { } moved && !drafts.Any(other => other != draft && other.Day == moved && Spelling.Same(other.Opponent ?? "", draft.Opponent ?? ""))) (draft.Day, draft.IsMoved) = (moved, false);
            Keep(asked);
        }
        if (cell.IsTournament)
        {
            var asked = asker.Ask("sheet-tournament", Subject(draft), line, [Asker.Option("sheet-tournament", "tournament"), Asker.Option("sheet-tournament", "match")], [draft.Entry.Text], "tournament", name: "Q-sevens");
            draft.IsTournament = asked.IsOpen || asked.Answer == "tournament";
            Keep(asked);
        }
        if (cell.Times > 1)
        {
            var asked = asker.Ask("sheet-times", Subject(draft), line, [Asker.Option("sheet-times", "two", cell.Times), Asker.Option("sheet-times", "one")], [draft.Entry.Text, cell.Times], name: "Q-x2");
            Keep(asked);
            if (asked.Answer == "two") draft.Times = cell.Times;
        }
        if (cell.IsConditional)
        {
            var asked = asker.Ask("sheet-condition", Subject(draft), line, [Asker.Option("sheet-condition", "event"), Asker.Option("sheet-condition", "nothing")], [draft.Entry.Text], takes: answer => answer.Trim().Length is > 0 and <= 200, name: "Q-cond");
            Keep(asked);
            if (asked.Answer == "nothing") draft.IsMatch = false;
            else if (asked.Answer == "event") draft.IsTournament = true;
            else if (asked.Answer is { } words) draft.Condition = words;
        }
        if (draft.Opponent is { } name && (name.Contains(" / ", StringComparison.Ordinal) || name.Contains(" or ", StringComparison.Ordinal)))
        {
            var asked = asker.Ask("sheet-either", Subject(draft), line, [Asker.Option("sheet-either", "unknown"), Asker.Option("sheet-either", "as-written")], [draft.Entry.Text], name: "Q-or");
            Keep(asked);
            if (asked.Answer == "unknown") draft.Opponent = null;
        }
    }

    private void AskLoads(List<SheetRow> rows)
    {
        var loads = rows.Where(row => row.Role == RowRole.Load && row.Entries.Count > 0).ToList();
        var words = loads.Where(row => !row.IsNumbers).ToList();
        if (words.Count > 0)
        {
            var scale = words.SelectMany(row => row.Entries).Where(entry => entry.Number is null && !TimeText.IsUnknown(entry.Text)).Select(entry => legend.Meaning(entry.Text)).Distinct(StringComparer.OrdinalIgnoreCase).Take(8).ToList();
            asker.Ask("sheet-load", "", words.SelectMany(Lines), [Asker.Option("sheet-load", "words")], [string.Join(" / ", scale)], takes: answer => LoadScale.Read(answer) is not null, name: "Q-load");
        }
        foreach (var row in loads.Where(row => row.IsOfTen))
            asker.Ask("sheet-scale", row.Key, Lines(row), [Asker.Option("sheet-scale", "ten"), Asker.Option("sheet-scale", "words")], [row.Label], "ten", name: "Q-scale");
    }

    private void AskRow(SheetRow row, List<SheetRow> rows)
    {
        var open = row.Entries.Where(entry => entry.Text.EndsWith('?')).ToList();
        if (row.Role == RowRole.Tests && open.Count > 0)
            foreach (var entry in open) asker.Ask("sheet-test", $"{row.Key}|{entry.Cell}", [entry.Cell.Row], [Asker.Option("sheet-test", "yes"), Asker.Option("sheet-test", "no")], [entry.Text, entry.Days.First], name: "Q-tests");
        if (row.Role == RowRole.Tests && row.Entries.Any(entry => entry.Days.Length > 1))
            asker.Ask("sheet-test-day", row.Key, Lines(row), [Asker.Option("sheet-test-day", "unknown")], [row.Label], takes: answer => CalendarWords.Weekday(answer) is not null, name: "Q-test-day");
        if (row.Role == RowRole.Emphasis)
            asker.Ask("sheet-sessions", row.Key, Lines(row), [Asker.Option("sheet-sessions", "yes"), Asker.Option("sheet-sessions", "no")], [row.Label], "yes", name: "Q-sessions");
        if (row.Role == RowRole.Phases && rows.TrueForAll(other => other.Role != RowRole.Blocks) && row.Entries.All(entry => entry.Fill is not null) && row.Entries.Count > 1)
            asker.Ask("sheet-blocks", row.Key, Lines(row), [Asker.Option("sheet-blocks", "phases"), Asker.Option("sheet-blocks", "both")], [row.Label], "phases", name: "Q-block");
        if (row.Role != RowRole.Own) return;
        var events = row.Entries.Where(entry => EventWords.Of(entry.Text).Kind != EventKind.Other).ToList();
        if (events.Count > 0)
            asker.Ask("sheet-events", row.Key, events.Select(entry => entry.Cell.Row), [Asker.Option("sheet-events", "remarks"), Asker.Option("sheet-events", "events")],
                [row.Label, events.Count, string.Join(", ", events.Take(3).Select(entry => entry.Text))], "remarks", name: "Q-events");
    }

    private static IEnumerable<int> Lines(SheetRow row) => row.Entries.Select(entry => entry.Cell.Row);

    private static string Subject(Draft draft) => draft.Part == 0 ? $"{draft.Source.Key}|{draft.Entry.Cell}" : $"{draft.Source.Key}|{draft.Entry.Cell}|{draft.Part + 1}";

    private sealed class Draft(SheetRow row, SheetEntry entry, MatchCell? cell)
    {
        public SheetRow Source => row;

        public string Row => row.Key;

        public SheetEntry Entry => entry;

        public MatchCell? Cell => cell;

        public DateOnly? Day { get; set; }

        public int IsOneOf { get; init; }

        /// <summary>Which line of its cell it is, from 0.</summary>
        public int Part { get; init; }

        public string? Opponent { get; set; } = cell?.Opponent;

        public Venue? Venue { get; set; } = cell?.Venue;

        public string? Condition { get; set; } = cell is { IsConditional: true } ? cell.Condition ?? Spelling.Tidy(entry.Text) : null;

        public bool IsTournament { get; set; }

        public bool IsMoved { get; set; }

        public bool IsWritten { get; set; } = true;

        public bool IsMatch { get; set; } = true;

        public int Times { get; set; } = 1;

        public List<string> Ask { get; } = [];

        public SheetMatch Match()
        {
            var status = cell is { IsCancelled: true } ? MatchStatus.Cancelled
                : IsMoved || cell is { IsPostponed: true } ? MatchStatus.Postponed
                : cell is { IsConditional: true } ? MatchStatus.Conditional
                : Day is null || cell is null or { IsDoubtful: true } || IsOneOf > 1 && Ask.Count > 0 ? MatchStatus.Provisional : MatchStatus.Confirmed;
            var competition = cell is null ? null : cell.IsFriendly && cell.Competition is null ? Sentences.Say("sheet.friendly") : cell.Competition;
            return new(row.Sheet, entry.Cell, entry.Days, entry.Text, Opponent, Venue, Day, cell?.KickOff, status, competition,
                cell is { IsFriendly: true } ? Importance.Friendly : cell is { IsKey: true } ? Importance.Key : Importance.Regular, cell?.Place, status == MatchStatus.Conditional ? Condition : null, IsTournament, IsWritten, Ask.Distinct(StringComparer.Ordinal).ToValueList());
        }
    }
}
