using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Spans;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>
/// Reads a coach's own year workbook: weeks across or down, several sheets, colours with a legend, days down and months across. Never
/// throws on content; what it does not say is asked, what tells of health is held back, and every cell is in a row or told.
/// </summary>
public static class SheetReader
{
    /// <summary>Cells with words or figures, in all sheets that are shown; a year of days with 20 rows has about 7,000.</summary>
    public const int MostCells = 20_000;

    /// <summary>Characters in them.</summary>
    public const int MostText = 1_000_000;

    /// <param name="map">What the coach has said about its rows and questions; empty for the first guess.</param>
    public static SheetReading Read(Workbook book, SheetMap map)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(map);
        return new Reading(book, map).Read();
    }

    /// <summary>A reading; of a file that is no year but clearly a list, with the problem that says where it belongs.</summary>
    public static SheetReading OrElsewhere(SheetReading read, byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(read);
        // Of a workbook that holds a list of matches the reader says more itself.
        return read.Problems.Any(problem => problem.Id != "sheet-only-list") && ListKinds.Elsewhere(SourceText.OfBytes(read.Name, bytes), ListKind.Year) is { } problem ? read with { Problems = new([problem]) } : read;
    }

    /// <summary>One workbook while it is being read.</summary>
    private sealed class Reading(Workbook book, SheetMap map)
    {
        private readonly Asker asker = new(map.Answers);

        private readonly Legend legend = new();

        private readonly List<SheetLayout> layouts = [];

        private readonly List<DraftRow> rows = [];

        private readonly List<SheetRemark> remarks = [];

        private readonly List<HeldBack> heldBack = [];

        private readonly List<LeftOut> leftOut = [];

        private readonly List<ListedHere> listed = [];

        private readonly List<DaySpan> spans = [];

        private readonly Dictionary<DayOfWeek, int> starts = [];

        // Keys of a sheet's rows by their labels.
        private readonly Dictionary<string, string> firsts = new(StringComparer.Ordinal);

        private static readonly string[] LegendWords = ["legend", "key", "légende", "leyenda", "zeichen", "abkürzung", "tegnforklaring", "teckenförklaring", "legenda"];

        private string? team;

        public SheetReading Read()
        {
            if (book.Problems.Count > 0) return Result(null, [], book.Problems);
            foreach (var sheet in book.Sheets.Where(sheet => sheet.IsHidden && sheet.Cells.Count > 0)) Leave(sheet, "", sheet.Name, "hidden-sheet");
            var shown = book.Sheets.Where(sheet => !sheet.IsHidden && sheet.Cells.Count > 0).ToList();
            var said = shown.SelectMany(sheet => sheet.Cells).Where(cell => !cell.IsEmpty || cell.Comment.Length > 0).ToList();
            if (said.Count > MostCells || said.Sum(cell => (long)cell.Text.Length + cell.Comment.Length) > MostText) return Result(null, [], new([Problem.Of("sheet-large", book.Name, null, null, MostCells, MostText)]));
            var years = shown.SelectMany(sheet => sheet.Cells.Where(cell => cell.Value is CellValue.Words && cell.Row <= 10).Select(cell => cell.Text).Append(sheet.Name)).Select(SeasonYears.Find).OfType<SeasonYears>().Where(year => year.TwoYears).Distinct().ToList();
            foreach (var sheet in shown) TakeLegend(sheet);
            foreach (var sheet in shown)
            {
                var axes = WeekAxis.Find(sheet, years, asker);
                if (DayGrid.Find(sheet) is { } grid && grid.Places.Count > axes.Sum(axis => axis.Places.Count)) Take(grid);
                else if (axes.Count > 0 && !ListedHere.IsMatchList(sheet, axes[0])) Take(axes);
                else if (ListedHere.Read(sheet) is { } list)
                {
                    listed.Add(list);
                    layouts.Add(new(sheet.Name, SheetForm.MatchList, list.List.Rows.Count, ""));
                    foreach (var line in list.List.Skipped.Where(line => line.Kind is not ("blank" or "blank-line"))) leftOut.Add(new(sheet.Name, Sentences.Say("sheet.row", line.Line), line.Text, line.Kind, line.Why));
                    HoldBack(sheet);
                }
                else LeaveSheet(sheet);
            }
            if (Grid() is not { } weeks) return Result(null, [], asker.Open.Count > 0 ? ValueList<Problem>.Empty : new([listed.Count > 0 ? Problem.Of("sheet-only-list", book.Name, null, null, listed[0].Sheet.Name) : Problem.Of("sheet-no-dates", book.Name, null, null)]));
            if (weeks.Count > Frame.MostWeeks) return Result(null, [], new([Problem.Of("sheet-long", book.Name, null, null, weeks.Span.First, weeks.Span.Last, Frame.MostWeeks)]));
            var offered = MatchDetails.Beside([.. rows.GroupBy(row => row.Key, StringComparer.Ordinal).Select(parts => parts.First() with { Entries = [.. parts.SelectMany(part => part.Entries)] })]).Select(row => row.Offered(map, legend)).ToList();
            return Result(weeks, new SheetQuestions(asker, legend, leftOut, weeks, listed, map).Ask(offered), ValueList<Problem>.Empty);
        }

        private SheetReading Result(WeekGrid? weeks, IEnumerable<SheetRow> offered, ValueList<Problem> problems) => new(book.Name, team, weeks, layouts.ToValueList(), offered.ToValueList(),
            remarks.ToValueList(), heldBack.Distinct().ToValueList(), leftOut.ToValueList(), asker.Open, asker.Answered, problems);

        /// <summary>All weeks of all sheets; they begin on the day of the week that most places begin on.</summary>
        private WeekGrid? Grid()
        {
            if (spans.Count == 0) return null;
            var start = starts.Count > 0 ? starts.MaxBy(day => day.Value).Key
                : asker.Ask("sheet-weekstart", "", [], [Asker.Option("sheet-weekstart", "monday"), Asker.Option("sheet-weekstart", "sunday")], [], "monday", name: "Q-weekstart").Answer == "sunday" ? DayOfWeek.Sunday : DayOfWeek.Monday;
            var (first, last) = (spans.Min(span => span.First), spans.Max(span => span.Last));
            return new(first, start, (last.DayNumber - WeekGrid.StartOfWeek(first, start).DayNumber) / 7 + 1);
        }

        private void Take(IReadOnlyList<WeekAxis> axes)
        {
            var view = axes[0].View;
            HoldBack(view.Sheet, cell => axes.FirstOrDefault(axis => axis.Holds(view.LineOf(cell.At))) is { } axis && axis.Places.TryGetValue(view.PlaceOf(cell.At), out var days) ? days : null);
            firsts.Clear();
            foreach (var axis in axes) Take(axis);
        }

        private void Take(WeekAxis axis)
        {
            var view = axis.View;
            var sheet = view.Sheet;
            layouts.Add(new(sheet.Name, view.IsDown ? SheetForm.WeeksDown : SheetForm.WeeksAcross, axis.Places.Count, view.WhereOf(axis.Line)));
            spans.Add(axis.Days);
            // A day for each place says nothing about where weeks begin.
            if (axis.Places.Values.Count(span => span.Length == 1) * 2 < axis.Places.Count)
                foreach (var span in axis.Places.Values.Skip(1)) starts[span.First.DayOfWeek] = starts.GetValueOrDefault(span.First.DayOfWeek) + 1;
            LeaveOutside(axis);
            // A date that is an error: its week is known from its neighbours, and it is told all the same.
            foreach (var (place, _) in axis.Places)
                if (view[axis.Line, place] is { Value: CellValue.Error } error) Leave(sheet, error.At.ToString(), error.Text, "error");
            var lines = view.Lines.Where(line => line.Key != axis.Line && axis.Holds(line.Key)).ToList();
            // A line for each day of the week: whatever the day brings stands in one cell, as on a calendar.
            var weekdays = lines.Select(line => (line.Key, Weekday: CalendarWords.Weekday(LabelOf(axis, line.Key)))).Where(line => line.Weekday is not null).ToDictionary(line => line.Key, line => line.Weekday!.Value);
            if (weekdays.Values.Distinct().Count() < WeekdaysOfCalendar) weekdays.Clear();
            foreach (var line in lines.Where(line => !weekdays.ContainsKey(line.Key))) TakeLine(axis, line.Key, [.. line]);
            if (weekdays.Count > 0) rows.AddRange(DayGrid.Split(sheet, [.. lines.Where(line => weekdays.ContainsKey(line.Key)).SelectMany(line => OnDay(axis, [.. line], weekdays[line.Key])).OrderBy(entry => entry.Days.First)], legend));
        }

        private const int WeekdaysOfCalendar = 5;

        private IEnumerable<SheetEntry> OnDay(WeekAxis axis, List<SheetCell> cells, DayOfWeek weekday)
        {
            foreach (var error in cells.Where(cell => cell.Value is CellValue.Error)) Leave(axis.View.Sheet, error.At.ToString(), error.Text, "error");
            return Entries(axis, [.. cells.Where(cell => axis.Places.ContainsKey(axis.View.PlaceOf(cell.At)))], false)
                .Select(entry => entry.Days.Days().Where(day => day.DayOfWeek == weekday).ToList() is [var day] ? entry with { Days = DaySpan.Of(day) } : entry);
        }

        private void TakeLine(WeekAxis axis, int line, List<SheetCell> cells)
        {
            var view = axis.View;
            var sheet = view.Sheet;
            var label = LabelOf(axis, line);
            var inside = cells.Where(cell => axis.Places.ContainsKey(view.PlaceOf(cell.At))).ToList();
            foreach (var error in inside.Where(cell => cell.Value is CellValue.Error)) Leave(sheet, error.At.ToString(), error.Text, "error");
            var said = inside.Where(cell => !cell.IsEmpty && cell.Value is not CellValue.Error).ToList();
            // In the next band of a sheet a row goes on.
            var key = label.Length == 0 ? view.KeyOf(line) : firsts.TryGetValue(SpanToken.Fold(label), out var first) && axis.Band.From > 0 ? first : firsts[SpanToken.Fold(label)] = view.KeyOf(line);
            var coloured = said.Count == 0 && label.Length > 0 && inside.Count(cell => cell.Fill is not null) * 2 > axis.Places.Count;
            if (said.Count == 0 && !coloured)
            {
                if (label.Length > 0 && !view.IsDown) LeaveWords(sheet, view.WhereOf(line), label, isAbove: line < axis.Line);
                return;
            }
            if (IsCalendar(said, label, axis)) return;
            // A legend may stand below the weeks, in their columns.
            if (label.Length == 0 && said.Count > 0 && said.TrueForAll(cell => legend.IsBesideColour(sheet, cell.At)))
            {
                foreach (var cell in said) Leave(sheet, cell.At.ToString(), cell.Text, "legend");
                return;
            }
            // Titles stand above the dates and reach over a few places only.
            if (!view.IsDown && line < axis.Line && said.Count <= 2 && label.Length == 0 || label.Length > 60 && said.Count == 0)
            {
                foreach (var cell in said) Leave(sheet, cell.At.ToString(), cell.Text, "title");
                return;
            }
            var chosen = map.Roles.TryGetValue(key, out var role);
            if (!chosen) role = RoleOf(label, said);
            if (!chosen && RowWords.IsOld(label)) LeaveRow(view, line, label, "old");
            else if (!chosen && RowWords.Of(label) is null && said.Count > 0 && said.Count(cell => cell.IsFormula) * 3 > said.Count * 2 && said.All(cell => cell.Value is CellValue.Number)) LeaveRow(view, line, label, "computed");
            else
            {
                if (!view.IsDown && sheet.HiddenRows.Contains(line) || view.IsDown && sheet.HiddenColumns.Contains(line)) Leave(sheet, view.WhereOf(line), label, "hidden-read");
                var entries = Entries(axis, inside, coloured);
                rows.Add(new(key, sheet.Name, label.Length > 0 ? label : view.NameOf(line), role, role is RowRole.Phases or RowRole.Blocks ? Runs(axis, line, entries) : entries));
            }
        }

        private static RowRole RoleOf(string label, List<SheetCell> said)
        {
            var marked = said.Count(cell => MatchCell.HasMark(cell.Text));
            // Names and opponents have letters; counts of them have not.
            if (RowWords.Of(label) is { } role && !(role is RowRole.Phases or RowRole.Blocks or RowRole.Matches && said.Count > 0 && said.Count(cell => cell.Text.Any(char.IsLetter)) * 2 < said.Count)) return role;
            if (marked >= 3 && marked * 2 > said.Count) return RowRole.Matches;
            return said.Count >= 3 && said.All(cell => Exposures.Of(cell.Text) is not null) ? RowRole.Emphasis : RowRole.Own;
        }

        private List<SheetEntry> Entries(WeekAxis axis, List<SheetCell> cells, bool coloured)
        {
            var entries = new List<SheetEntry>();
            foreach (var cell in cells.OrderBy(cell => axis.View.PlaceOf(cell.At)))
            {
                if (!coloured && (cell.IsEmpty || cell.Value is CellValue.Error)) continue;
                if (coloured && cell.Fill is null) continue;
                var (first, last) = axis.View.Merged(cell.At);
                // A merge may as well reach far beyond the sheet's weeks.
                var own = axis.Places[axis.View.PlaceOf(cell.At)];
                var days = Enumerable.Range(first, Math.Min(last, axis.Last) - first + 1).Where(axis.Places.ContainsKey).Select(place => axis.Places[place]).Append(own).ToList();
                entries.Add(new(cell.At, new(days.Min(span => span.First), days.Max(span => span.Last)), coloured ? legend.Of(cell.Fill!.Value) ?? Sentences.Say("sheet.colour", cell.Fill) : Spelling.Tidy(cell.Text), cell.Value is CellValue.Number number ? number.Amount : null, cell.Fill) { Lines = cell.Text.Split(['\n', ';']).Select(Spelling.Tidy).Where(line => line.Length > 0).ToValueList() });
            }
            return entries;
        }

        /// <summary>One entry for each run: alike neighbours are one, and a name holds for empty cells of its colour behind it.</summary>
        private List<SheetEntry> Runs(WeekAxis axis, int line, List<SheetEntry> entries)
        {
            var runs = new List<SheetEntry>();
            foreach (var entry in entries)
            {
                var days = entry.Days;
                foreach (var (place, next) in axis.Places.Where(place => place.Value.First > entry.Days.Last))
                {
                    if (entry.Fill is null || axis.View[line, place] is not { IsEmpty: true } cell || cell.Fill != entry.Fill || entries.Any(other => other.Cell == cell.At)) break;
                    days = new(days.First, next.Last);
                }
                if (runs.Count > 0 && runs[^1].Text == entry.Text && runs[^1].Days.Last.AddDays(1) == days.First) runs[^1] = runs[^1] with { Days = new(runs[^1].Days.First, days.Last) };
                else runs.Add(entry with { Days = days });
            }
            // Names in single cells, mostly with nothing behind them: perhaps each holds until the next.
            if (runs.Count < 2 || runs.Any(run => run.Days.Length > 7) || runs.Count * 2 > axis.Places.Count) return runs;
            var asked = asker.Ask("sheet-until", axis.View.KeyOf(line), runs.Select(run => run.Cell.Row), [Asker.Option("sheet-until", "yes"), Asker.Option("sheet-until", "no")], [runs[0].Text, runs[1].Text], "yes", name: "Q-until");
            return asked.Answer != "yes" ? runs : [.. runs.Select((run, i) => run with { Days = new(run.Days.First, i + 1 < runs.Count ? runs[i + 1].Days.First.AddDays(-1) : axis.Days.Last) })];
        }

        /// <summary>What stands beside a line in front of its weeks: the farthest words across, the nearest heading down.</summary>
        private static string LabelOf(WeekAxis axis, int line)
        {
            var view = axis.View;
            var before = axis.Before[line].Where(cell => cell.Value is CellValue.Words or CellValue.Number).Select(cell => Spelling.Tidy(cell.Text)).ToList();
            if (before.Count == 0) return "";
            if (!view.IsDown) return string.Join(' ', before.Distinct(StringComparer.Ordinal));
            // The headings are the row nearest above the first week; what stands higher is a title.
            return view[line, axis.HeadingPlace] is { IsEmpty: false } heading ? Spelling.Tidy(heading.Text) : "";
        }

        // Months, week numbers and a second line of dates: they say again when a week is.
        private static bool IsCalendar(List<SheetCell> said, string label, WeekAxis axis)
        {
            if (said.Count == 0) return false;
            if (said.TrueForAll(cell => axis.Places[axis.View.PlaceOf(cell.At)] is { Length: 1 } day && CalendarWords.Weekday(cell.Text.Trim()) == day.First.DayOfWeek)) return true;
            var dates = said.Count(cell => cell.Value is CellValue.Day || DateText.Find(cell.Text, months: true) is { } date && DateText.Without(cell.Text, date).Length == 0);
            if (dates * 5 >= said.Count * 4) return true;
            var numbers = said.Select(cell => cell.Value is CellValue.Number number ? number.Amount : -1).ToList();
            var rises = numbers.Zip(numbers.Skip(1)).Count(pair => pair.Second == pair.First + 1 || pair.Second == 1 && pair.First >= 52);
            return said.Count * 5 >= axis.Places.Count * 4 && numbers.All(number => number is >= 1 and <= 60) && rises >= numbers.Count - 2;
        }

        // Lines that are no weeks: titles above, repeated headings and print lines between, sums and notes behind.
        private void LeaveOutside(WeekAxis axis)
        {
            var view = axis.View;
            var labels = view.IsDown ? axis.HeadingPlace : 0;
            var headings = Enumerable.Range(1, view.LastLine).Select(line => view[line, labels]?.Text ?? "").Where(text => text.Length > 0).ToHashSet(StringComparer.Ordinal);
            foreach (var place in view.Sheet.Cells.Where(cell => axis.Holds(view.LineOf(cell.At)) && !axis.Places.ContainsKey(view.PlaceOf(cell.At)) && !cell.IsEmpty).GroupBy(cell => view.PlaceOf(cell.At)))
            {
                // Across, what stands in front of the weeks are labels, told with their lines.
                if (!view.IsDown && place.Key < axis.First || place.Key == labels) continue;
                foreach (var error in place.Where(cell => cell.Value is CellValue.Error)) Leave(view.Sheet, error.At.ToString(), error.Text, "error");
                var text = string.Join(' ', place.Select(cell => cell.Text));
                var kind = place.Key < axis.First ? place.All(cell => new Legend().Take(cell.Text)) ? "legend" : "title"
                    : place.Any(cell => ListWords.IsTotal(cell.Text)) ? "total"
                    : place.Count(cell => headings.Contains(cell.Text)) * 2 > place.Count() ? "headings"
                    : place.Key < axis.Last ? "between" : place.All(cell => new Legend().Take(cell.Text)) ? "legend" : "outside";
                if (kind == "title") TakeTitle(text);
                Leave(view.Sheet, view.WhereOfPlace(place.Key), text, kind);
            }
        }

        private void LeaveWords(Sheet sheet, string where, string text, bool isAbove)
        {
            if (isAbove) TakeTitle(text);
            Leave(sheet, where, text, isAbove ? "title" : ListWords.IsTotal(text) ? "total" : new Legend().Take(text) || legend.HasColours ? "legend" : "outside");
        }

        // "HARBOUR VALE – women – season 2026/27": the club stands before the first dash.
        private void TakeTitle(string text)
        {
            var name = text.Split([" – ", " — ", " - ", "|"], StringSplitOptions.TrimEntries)[0];
            if (team is null && name.Length is > 2 and <= 60 && !name.Contains('=', StringComparison.Ordinal)) team = name;
        }

        private void Take(DayGrid grid)
        {
            layouts.Add(new(grid.Sheet.Name, SheetForm.DaysDownMonthsAcross, grid.Places.Count, Sentences.Say("sheet.row", grid.HeadingRow)));
            spans.Add(grid.Days);
            HoldBack(grid.Sheet, cell => grid.Places.TryGetValue(cell.At, out var day) ? DaySpan.Of(day) : null);
            var (days, periods) = grid.Rows(legend);
            if (days.Count > 0) rows.AddRange(DayGrid.Split(grid.Sheet, days, legend));
            if (periods.Count > 0) rows.Add(new($"{grid.Sheet.Name}!colours", grid.Sheet.Name, Sentences.Say("sheet.colours"), RowRole.Phases, periods));
            foreach (var cell in grid.Sheet.Cells.Where(cell => !cell.IsEmpty && !grid.IsPart(cell.At)))
            {
                if (cell.Row < grid.HeadingRow) TakeTitle(cell.Text);
                Leave(grid.Sheet, cell.At.ToString(), cell.Text, cell.Value is CellValue.Error ? "error" : cell.Row < grid.HeadingRow ? "title" : cell.IsFormula ? "computed" : new Legend().Take(cell.Text) ? "legend" : "outside");
            }
        }

        private void TakeLegend(Sheet sheet)
        {
            foreach (var cell in sheet.Cells)
            {
                if (cell.Value is CellValue.Words) legend.Take(cell.Text);
                else legend.Take(sheet, cell);
            }
            if (!IsLegendSheet(sheet)) return;
            foreach (var row in sheet.Cells.Where(cell => !cell.IsEmpty).GroupBy(cell => cell.Row))
                if (row.ToList() is [var mark, var meaning]) legend.Take(Spelling.Tidy(mark.Text), Spelling.Tidy(meaning.Text));
        }

        // Two columns of few words each, and no dates.
        private static bool IsLegendSheet(Sheet sheet) => sheet.LastColumn <= 3 && sheet.LastRow <= 40 && sheet.Cells.All(cell => cell.Value is not CellValue.Day)
            && Spelling.Fold(sheet.Name) is var name && LegendWords.Any(word => name.Contains(word, StringComparison.Ordinal));

        private void LeaveSheet(Sheet sheet)
        {
            HoldBack(sheet);
            Leave(sheet, "", sheet.Name, IsLegendSheet(sheet) ? "legend" : "no-dates");
        }

        /// <summary>Keeps the notes at cells, but for those that tell of health; cells that do are held back as well.</summary>
        private void HoldBack(Sheet sheet, Func<SheetCell, DaySpan?>? days = null)
        {
            foreach (var cell in sheet.Cells)
            {
                var isHealth = cell.Value is CellValue.Words && HealthWords.In(cell.Text);
                if (isHealth) heldBack.Add(new(sheet.Name, cell.At, false));
                if (cell.Comment.Length == 0) continue;
                // What is noted at such a cell tells of the same.
                if (isHealth || HealthWords.In(cell.Comment)) heldBack.Add(new(sheet.Name, cell.At, true));
                else remarks.Add(new(sheet.Name, cell.At, days?.Invoke(cell), Spelling.Cut(Spelling.Tidy(cell.Comment), 2000)));
            }
        }

        // A row that nobody asked for, and that may be.
        private void LeaveRow(SheetView view, int line, string label, string kind)
        {
            Leave(view.Sheet, view.WhereOf(line), label, kind);
            leftOut[^1] = leftOut[^1] with { Row = view.KeyOf(line) };
        }

        private void Leave(Sheet sheet, string where, string text, string kind) => leftOut.Add(LeftOut.Of(sheet.Name, where, HealthWords.In(text) ? "" : text, kind));
    }
}
