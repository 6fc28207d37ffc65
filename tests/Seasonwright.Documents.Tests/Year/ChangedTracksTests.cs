using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Year;

namespace Seasonwright.Documents.Tests.Year;

/// <summary>After an edit only the tracks it speaks of are new; every other one is equal and is not sent again.</summary>
public class ChangedTracksTests
{
    private static readonly SeasonBook Book = new SeasonBook(40)
        .Phase(1, 6, PhaseKind.GeneralPreparation).Phase(7, 30, PhaseKind.Competition)
        .Block(1, 4, BlockKind.Base).Block(5, 8, BlockKind.Build)
        .Match(new(2027, 8, 21), "Turnes").Match(new(2027, 8, 28), "Kalmar")
        .Event(new(2027, 9, 6), new(2027, 9, 10), "Coast camp")
        .Write(
            new SetTrack(new Track(new("gym"), "Gym room", TrackForm.Text)),
            new SetTestDay(new TestDay(new("t1"), new(2027, 7, 7), "Jump")),
            new SetNote(new Note(new("n1"), new(new(2027, 7, 5), new(2027, 7, 11)), "Keys at the porter's")));

    public static TheoryData<string, SeasonEdit, string> Cases
    {
        get
        {
            var data = new TheoryData<string, SeasonEdit, string>();
            var (w5, w6) = (Book.Week(5), Book.Week(6));
            Add(new SetWeekLoad(w5, w6, new Load(2_000)), "weeks load");
            Add(new SetEmphasis(w5, w6, new("power"), Emphasis.Focus), "emphasis emphasis-power");
            Add(new SetWeekKind(w5, w6, WeekKind.Unloading), "blocks");
            Add(new SetPractices(w5, w6, new Practices(4)), "practices");
            Add(new SetPracticeWish(w5, "Keep Thursday short"), "");
            Add(new SetWeekNote(w5, "Early start on Friday"), "notes");
            Add(new LockWeeks(w5, w6, true), "weeks");
            Add(new MarkReady(w5, w6, true), "weeks");
            Add(new PaintPhase(w5, w6, new("p"), PhaseKind.Peak, new("r")), "weeks phases");
            // The strokes of emphasis end where a block does, but there is none in these weeks.
            Add(new PaintBlock(w5, w6, new("b"), BlockKind.Peak, new("r")), "blocks");
            Add(new SetMatch(new Match(new("m"), new DateOnly(2027, 9, 4), Opponent: "Orsund", Venue: Venue.Away)), "weeks dates matches load");
            Add(new SetEvent(new Event(new("e"), EventKind.Exams, "Exams", DaySpan.Of(new DateOnly(2027, 10, 4)))), "events");
            Add(new SetTestDay(new TestDay(new("t2"), new DateOnly(2027, 10, 5), "Sprint")), "tests");
            Add(new SetNote(new Note(new("n2"), DaySpan.Of(new DateOnly(2027, 10, 5)), "Photo day")), "notes");
            Add(new SetCells([new TrackCell(new("gym"), CellPlace.Of(w5), "main hall")]), "own-gym");
            Add(new SetTrack(new Track(new("bus"), "Bus", TrackForm.Tick)), "own-bus");
            Add(new NameTeam(new TeamCard("Harbour Vale II")), "");
            Add(new Publish("For the board"), "");
            return data;

            void Add(SeasonEdit edit, string tracks) => data.Add(edit.GetType().Name, edit, tracks);
        }
    }

    [Theory]
    [MemberData(nameof(Cases), DisableDiscoveryEnumeration = true)]
    public void Only_the_tracks_an_edit_speaks_of_differ(string name, SeasonEdit edit, string tracks)
    {
        var setup = Setup.Empty(new("harbour-vale"));
        var view = new YearView { Today = new DateOnly(2027, 9, 22) };
        var before = YearDrawing.Of(Book.Season, setup, view);
        var accepted = Assert.IsType<Accepted>(Decider.Decide(Book.Season, edit));
        var after = YearDrawing.Of(Book.Season.With(accepted.Step), setup, view);

        var changed = after.Tracks.Where(track => !before.Tracks.Contains(track)).Select(track => track.Id);
        Assert.Equal($"{name}: {tracks}", $"{name}: {string.Join(' ', changed)}");
        Assert.Equal(before.Columns, after.Columns);
    }

    [Fact]
    public void The_next_day_changes_no_mark_but_todays_part()
    {
        var setup = Setup.Empty(new("harbour-vale"));
        var one = YearDrawing.Of(Book.Season, setup, new YearView { Today = new DateOnly(2027, 9, 22) });
        var next = YearDrawing.Of(Book.Season, setup, new YearView { Today = new DateOnly(2027, 9, 23) });
        foreach (var (before, after) in one.Tracks.Zip(next.Tracks).Where(pair => pair.First.Id is not ("dates" or "today")))
            Assert.Equal(before.Marks.Skip(1), after.Marks.Skip(1));
    }
}
