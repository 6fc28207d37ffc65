using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Desk.Demo;

/// <summary>The demo's own tracks, notes and group line, and what is still a draft.</summary>
internal static class DemoRows
{
    private static readonly (int First, int Last, string Words)[] GymHall = [(1, 8, "main hall 16:00"), (9, 24, "early group 07:15"), (27, 43, "early group 07:15")];

    private static readonly (int Week, string Hours)[] CoachHours = [(10, "3"), (12, "5"), (16, "4.5"), (19, "9"), (21, "3"), (23, "4"), (29, "6"), (31, "9"), (35, "3.5")];

    private static readonly int[] Swims = [9, 11, 13, 15, 18, 22, 24];

    public static IEnumerable<SeasonEdit> Tracks(DemoCalendar calendar)
    {
        var hall = new Track(new(calendar.Id("track", "Gym hall")), "Gym hall", TrackForm.Text, Place: 1);
        var theme = new Track(new(calendar.Id("track", "Playing theme")), "Playing theme", TrackForm.Choice, Choices: new(["Defence", "Fast break", "Set attack"]), Place: 2);
        var video = new Track(new(calendar.Id("track", "Video")), "Video", TrackForm.Tick, Place: 3);
        var hours = new Track(new(calendar.Id("track", "On the coach")), "On the coach", TrackForm.Number, Unit: "h", Place: 4);
        var swim = new Track(new(calendar.Id("track", "Swim")), "Swim", TrackForm.Tick, TrackGrain.Day, Place: 5);
        foreach (var track in new[] { hall, theme, video, hours, swim }) yield return new SetTrack(track);
        foreach (var run in GymHall)
            yield return new SetCells(Enumerable.Range(run.First, run.Last - run.First + 1).Select(week => Cell(calendar, hall, week, run.Words)).ToValueList());
        yield return new SetCells(Enumerable.Range(9, 16).Select(week => Cell(calendar, theme, week, theme.Choices![week / 4 % 3])).ToValueList());
        yield return new SetCells(Enumerable.Range(9, 31).Where(week => week is < 25 or > 28).Select(week => Cell(calendar, video, week, "yes")).ToValueList());
        yield return new SetCells(CoachHours.Select(cell => Cell(calendar, hours, cell.Week, cell.Hours)).ToValueList());
        yield return new SetCells(Swims.Select(week => new TrackCell(swim.Id, CellPlace.Of(calendar.Day(week, DayOfWeek.Sunday)), "yes")).ToValueList());
    }

    public static IEnumerable<SeasonEdit> Notes(DemoCalendar calendar) =>
    [
        new SetNote(new Note(new(calendar.Id("note", "video")), calendar.Days(9, DayOfWeek.Monday, 15, DayOfWeek.Sunday), "Video night moved to Tuesdays")),
        new SetNote(new Note(new(calendar.Id("note", "exams")), calendar.Days(34, DayOfWeek.Monday, 36, DayOfWeek.Sunday), "Exam timetable due")),
        new SetNote(new Note(new(calendar.Id("note", "kit")), calendar.Days(1, DayOfWeek.Monday, 1, DayOfWeek.Sunday), "Keys, lockers, kit")),
        new SetWeekNote(calendar.Week(5), "Two gym sessions a day on Wednesday and Friday; the hall is ours until noon."),
        new SetWeekNote(calendar.Week(17), "Four away with their national teams. Heavy strength for those who stay."),
        new SetWeekNote(calendar.Week(25), "Practice on Monday and Tuesday, then home."),
    ];

    /// <summary>What the head coach is asked for, a few weeks of it.</summary>
    public static IEnumerable<SeasonEdit> Wishes(DemoCalendar calendar) =>
    [
        new SetPracticeWish(calendar.Week(14), "Two matches: Monday off the court, Thursday no more than 60 minutes."),
        new SetPracticeWish(calendar.Week(15), "The heaviest week of the block. Keep Tuesday's practice to tactics; strength is before it."),
        new SetPracticeWish(calendar.Week(16), "Easy week: one practice less, short and sharp."),
        new SetPracticeWish(calendar.Week(17), "Friday free for those who come back from their national teams."),
        new SetPracticeWish(calendar.Week(18), "Sprints first while legs are fresh: ten minutes at the start of Wednesday's practice."),
    ];

    /// <summary>What the log calls the group of first-year players.</summary>
    public static GroupId RookiesId(DemoCalendar calendar) => new(calendar.Id("group", "Rookies"));

    /// <summary>First-year players: less load at first, and strength before power.</summary>
    public static IEnumerable<SeasonEdit> Rookies(DemoCalendar calendar)
    {
        var rookies = RookiesId(calendar);
        return
        [
            new SetGroup(new GroupLine(rookies, "Rookies")),
            new SetGroupWeek(rookies, calendar.Week(1), calendar.Week(8), new Percent(85)),
            new SetGroupWeek(rookies, calendar.Week(9), calendar.Week(16), new Percent(90)),
            new SetGroupEmphasis(rookies, calendar.Week(5), calendar.Week(8), new("hypertrophy"), Emphasis.Develop),
            new SetGroupEmphasis(rookies, calendar.Week(13), calendar.Week(16), new("power"), Emphasis.Maintain),
        ];
    }

    /// <summary>What changed since the last version: a match put a day later, a note.</summary>
    public static IEnumerable<SeasonEdit> Draft(DemoCalendar calendar)
    {
        var match = DemoMatches.LeagueMatch(calendar, 12);
        return
        [
            new MoveMatch(match.Id, match.Day!.Value.AddDays(1), KickOff: new TimeOnly(15, 0)),
            new SetNote(new Note(new(calendar.Id("note", "photo")), calendar.Days(18, DayOfWeek.Monday, DayOfWeek.Monday), "Team photograph 17:30")),
        ];
    }

    private static TrackCell Cell(DemoCalendar calendar, Track track, int week, string value) => new(track.Id, CellPlace.Of(calendar.Week(week)), value);
}
