using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Workbooks;
using Seasonwright.Documents.Tests.HandOut;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>
/// Workbooks opened, reckoned and saved by LibreOffice, a spreadsheet that is not ours: whatever first day is put in, its weeks, months, ISO weeks and what
/// falls into them are those of our own calendar, and no text is ever run.
/// </summary>
public sealed class WorkbookTruth : IDisposable
{
    private static readonly Edition Draft = new(null, new DateOnly(2027, 10, 18));

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("workbooks");

    public void Dispose() => folder.Delete(recursive: true);

    /// <summary>Every weekday, the days around ten year ends, leap days and the days beside them, over two decades.</summary>
    private static IEnumerable<DateOnly> FirstDays()
    {
        DateOnly[] edges = [new(2024, 2, 29), new(2028, 2, 29), new(2032, 2, 28), new(2036, 3, 1), new(2020, 12, 28), new(2021, 1, 1), new(2026, 12, 31), new(2027, 1, 3), new(2032, 12, 27), new(2033, 1, 1)];
        return edges.Concat(Enumerable.Range(0, 30).Select(n => new DateOnly(2021, 7, 1).AddDays(n * 239)));
    }

    [Fact]
    public async Task Reckoned_for_40_first_days_every_cell_is_as_our_calendar_has_it()
    {
        var days = FirstDays().ToList();
        Assert.Equal((40, 7), (days.Count, days.Select(day => day.DayOfWeek).Distinct().Count()));
        var hostile = HostileSeasons.All.Where((_, n) => n < 6 || n % 10 == 0).Select(made => (made.Season, made.Setup)).ToList();
        var expected = new List<(string File, Season Season, byte[] Workbook)>();
        foreach (var (day, n) in days.Select((day, n) => (day, n)))
        {
            var weekStart = n % 2 == 0 ? DayOfWeek.Monday : DayOfWeek.Sunday;
            // Written for another first day, weeks before or after, and then changed in the file.
            var written = Book(day, day.AddDays(n * 17 % 91 - 45), weekStart);
            var moved = Book(day, day, weekStart);
            var file = Path.Combine(folder.FullName, FormattableString.Invariant($"first-{n}.xlsx"));
            File.WriteAllBytes(file, SheetCells.WithFirstDay(YearWorkbook.Write(written, Setup, Draft, new()), day));
            expected.Add((file, moved, YearWorkbook.Write(moved, Setup, Draft, new())));
        }
        foreach (var (season, setup) in hostile)
        {
            var file = Path.Combine(folder.FullName, $"{season.Id}.xlsx");
            var workbook = YearWorkbook.Write(season, setup, Draft, new());
            File.WriteAllBytes(file, SheetCells.WithFirstDay(workbook, season.Frame.FirstDay));
            expected.Add((file, season, workbook));
        }

        var reckoned = await LibreOffice.ReckonAsync(folder, [.. expected.Select(book => (book.File, SheetCells.Sheets(File.ReadAllBytes(book.File))))]);
        foreach (var ((file, season, workbook), theirs) in expected.Zip(reckoned))
        {
            foreach (var week in season.Weeks)
            {
                var row = week.Number + 4;
                var days2 = new WeekGrid(season.Frame.FirstDay, season.Frame.WeekStart, season.Weeks.Length).Week(week.Number);
                var month = new DateOnly(days2.First.Year, days2.First.Month, 1);
                Assert.Equal($"{file} {row}: {days2} {month:O} {week.IsoWeek.Number}",
                    $"{file} {row}: {new DaySpan(Day(theirs[$"Year!B{row}"]), Day(theirs[$"Year!C{row}"]))} {Day(theirs[$"Year!D{row}"]):O} {theirs[$"Year!E{row}"]}");
            }
            // What we keep in the file is what a spreadsheet reckons: nobody who opens it sees another value than who changes it.
            // The sheet Outside alone tells how it was when it was handed out.
            var ours = SheetCells.Of(workbook);
            var others = string.Join(Environment.NewLine, ours.Keys.Union(theirs.Keys, StringComparer.Ordinal)
                .Where(place => !place.StartsWith("Outside!", StringComparison.Ordinal) && SheetCells.Plain(ours.GetValueOrDefault(place, "")) != SheetCells.Plain(theirs.GetValueOrDefault(place, "")))
                .Select(place => $"{Path.GetFileName(file)} {place}: ours '{ours.GetValueOrDefault(place)}', theirs '{theirs.GetValueOrDefault(place)}'").Take(5));
            if (others.Length > 0) Assert.Fail(others);
        }
    }

    private static DateOnly Day(string day) => DateOnly.FromDateTime(new DateTime(1899, 12, 30).AddDays(int.Parse(SheetCells.Plain(day), CultureInfo.InvariantCulture)));

    private static Setup Setup { get; } = new(new("team"), FactSet.Empty.With(SetupFacets.ReferenceWeek.Of(default), new Load(3_000)));

    /// <summary>A season of 53 weeks that begins on a day, with the same things on the same days whatever that day is.</summary>
    private static Season Book(DateOnly middle, DateOnly first, DayOfWeek weekStart)
    {
        var random = new Random(middle.DayNumber);
        var weeks = Enumerable.Range(1, 53).Select(n => new WeekId($"w{n}")).ToList();
        var facts = FactSet.Empty
            .With(SeasonFacets.Frame.Of(default), new Frame(first, weekStart, weeks.ToValueList(), [], []))
            .With(SeasonFacets.Team.Of(default), new TeamCard("Harbour Vale", "2027-28"));
        foreach (var (week, n) in weeks.Select((week, n) => (week, n)))
            facts = facts.With(SeasonFacets.WeekLoad.Of(week), new Load(1_000 + 37 * n)).With(SeasonFacets.WeekNote.Of(week), $"week {n + 1}");
        DateOnly Any() => middle.AddDays(random.Next(-30, 400));
        for (var n = 0; n < 50; n++)
        {
            var id = new MatchId($"m{n}");
            var status = (MatchStatus)random.Next(6);
            DateOnly? day = n % 11 == 0 && status is MatchStatus.Postponed or MatchStatus.Cancelled ? null : Any();
            facts = facts.With(SeasonFacets.Match.Of(id), new Match(id, day, status == MatchStatus.Window ? day?.AddDays(9) : null, n % 3 == 0 ? new TimeOnly(18, 30) : null, Opponent: n % 7 == 0 ? null : $"Opponent {n}", Venue: n % 5 == 0 ? null : (Venue)(n % 3), Status: status));
        }
        for (var n = 0; n < 20; n++)
        {
            var (id, day) = (new EventId($"e{n}"), Any());
            facts = facts.With(SeasonFacets.Event.Of(id), new Event(id, (EventKind)(n % 8), $"Event {n}", new(day, day.AddDays(random.Next(25))), For: n % 3 == 0 ? "Backs" : null, Provisional: n % 4 == 0));
        }
        for (var n = 0; n < 8; n++)
        {
            var (test, note, day) = (new TestDayId($"t{n}"), new NoteId($"n{n}"), Any());
            facts = facts.With(SeasonFacets.TestDay.Of(test), new TestDay(test, Any(), $"Battery {n}")).With(SeasonFacets.Note.Of(note), new Note(note, new(day, day.AddDays(random.Next(12))), $"Note {n}"));
        }
        var track = new Track(new("swim"), "Swim", TrackForm.Number, TrackGrain.Day);
        facts = facts.With(SeasonFacets.Track.Of(track.Id), track);
        for (var n = 0; n < 60; n++) facts = facts.With(SeasonFacets.TrackCell.Of(new(track.Id, CellPlace.Of(Any()))), FormattableString.Invariant($"{n / 2m}"));
        return new Season(new("season"), facts.With(SeasonFacets.Goal.Of(new("g")), new Goal(new("g"), 1, "Jump, cm", 30m, 33m)));
    }
}
