using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>A season from a file is held to what edits could have made. A past bug: doubled weeks and impossible days were taken and threw later.</summary>
public class SoundTests
{
    private static readonly Season Season = History.After(
        new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, new([new("w1"), new("w2")]), new("Harbour Vale")),
        new SetMatch(new Match(new("m"), new DateOnly(2027, 7, 10))));

    private static readonly Match Match = Season.Match(new("m"))!;

    public static TheoryData<string, string, object, string> Wrong => new()
    {
        { "frame", "", Season.Frame with { Weeks = new([new("w1"), new("w1")]) }, "weeks-twice" },
        { "frame", "", Season.Frame with { After = new([new("w1")]) }, "weeks-twice" },
        { "frame", "", Season.Frame with { Weeks = ValueList<WeekId>.Empty }, "weeks-count" },
        { "frame", "", Season.Frame with { FirstDay = DateOnly.MaxValue }, "day-impossible" },
        { "frame", "", Season.Frame with { Before = Enumerable.Range(0, 600).Select(n => new WeekId($"b{n}")).ToValueList() }, "weeks-kept" },
        { "match", "m", Match with { LastDay = new DateOnly(2027, 7, 1) }, "days-backward" },
        { "match", "m", Match with { Zone = "Nowhere" }, "zone-unknown" },
        { "match", "other", Match, "place-wrong" },
        { "match", "not an id", Match, "place-wrong" },
        { "match", "m", "a text", "place-wrong" },
        { "march", "m", Match, "place-wrong" },
        { "event", "e", new Event(new("e"), EventKind.Camp, " ", DaySpan.Of(new(2027, 7, 5))), "text-missing" },
        { "test", "d", new TestDay(new("d"), DateOnly.MinValue, "Jump"), "day-impossible" },
        { "session", "s", new Session(new("s"), new(2027, 7, 6), DaySlot.Morning, SessionKind.Power, new Minutes(4), new Rpe(5)), "session-number" },
        { "session", "s", new Session(new("other"), new(2027, 7, 6), DaySlot.Morning, SessionKind.Power, new Minutes(40), new Rpe(5)), "place-wrong" },
        { "workout", "k", new Workout(new("k"), " ", [], Progression.None), "text-missing" },
        { "workout", "k", new Workout(new("other"), "Legs", [], Progression.None), "place-wrong" },
        { "home", "h", new HomeProgramme(new("h"), "Break", new(2027, 7, 5), 7, HomeKit.Nothing, [new HomeDay(DayOfWeek.Monday, new("k"))]), "home-weeks" },
        { "home", "h", new HomeProgramme(new("other"), "Break", new(2027, 7, 5), 2, HomeKit.Nothing, [new HomeDay(DayOfWeek.Monday, new("k"))]), "place-wrong" },
        { "note", "o", new Note(new("o"), DaySpan.Of(new(2027, 7, 5)), ""), "text-missing" },
        { "goal", "g", new Goal(new("g"), 7, "a"), "goal-rank" },
        { "track", "t", new Track(new("t"), "a", TrackForm.Choice), "choices-missing" },
        { "track.cell", "t:d=0001-01-01", "a", "day-impossible" },
        { "track.cell", "t:w=w1", new string('x', 2001), "text-long" },
        { "group", "r", new GroupLine(new("r"), "a", 99), "phase-shift" },
        { "phase", "p", new Phase(PhaseKind.Peak, new string('x', 121)), "text-long" },
        { "block", "b", new Block(BlockKind.Peak, "\0"), "text-control" },
        { "publication", "2", new Publication(1), "place-wrong" },
        { "week.practices", "w1", new Practices(99), "practices-count" },
        { "week.load", "w1", "2000", "place-wrong" },
        { "team", "", new TeamCard(""), "text-missing" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_fact_is_refused(string facet, string subject, object value, string id)
    {
        var facts = Season.Facts.With(new Key(facet, subject), value);
        Assert.Equal(id, Assert.Single(Sound.Season(facts)).Id);
        Assert.Equal(new Refused(Sound.Season(facts)), Decider.Decide(Season.Empty(new("new")), new AdoptSeason(facts, "file")));
    }

    [Fact]
    public void A_season_without_weeks_is_refused() =>
        Assert.Equal("weeks-count", Assert.Single(Sound.Season(FactSet.Empty)).Id);

    [Fact]
    public void What_edits_have_made_is_sound()
    {
        CsCheck.Check.Sample(AnySeason.Season, season =>
        {
            Assert.Empty(Sound.Season(season.Facts));
            Assert.Equal(season.Facts, Season.Empty(new("new")).With(Assert.IsType<Accepted>(Decider.Decide(Season.Empty(new("new")), new AdoptSeason(season.Facts, "file"))).Step).Facts);
        }, iter: 200);
        CsCheck.Check.Sample(AnySeason.Club, club => Assert.Empty(Sound.Club(club.Facts)), iter: 200);
        CsCheck.Check.Sample(AnySeason.Setup, setup => Assert.Empty(Sound.Setup(setup.Facts)), iter: 200);
    }

    [Fact]
    public void A_wrong_club_is_refused()
    {
        var gym = new Facility(new Room(new("gym"), "Strength room", 0, 2, [new(DayOfWeek.Monday, new(16, 0), new(20, 0))]));
        Assert.Equal("facility-number", Sound.Club(FactSet.Empty.With(ClubFacets.Facility.Of(gym.Room.Id), gym)).Single().Id);
        Assert.Equal("place-wrong", Sound.Club(FactSet.Empty.With(ClubFacets.Facility.Of(new("other")), gym)).Single().Id);
        Assert.Equal("place-wrong", Sound.Club(FactSet.Empty.With(SetupFacets.TeamName.Of(default), "Harbour Vale")).Single().Id);
    }

    [Fact]
    public void A_wrong_setup_is_refused()
    {
        var sessions = new Sessions(-1, new Minutes(60), new Rpe(5));
        Assert.Equal("practices-count", Sound.Setup(FactSet.Empty.With(SetupFacets.UsualWeek.Of(default), new UsualWeek(sessions, sessions, sessions)))[0].Id);
        var week = new TypicalWeek(new("y"), "One match", DaySpan.Of(new(2027, 7, 5)), [], ValueList<Session>.Empty);
        Assert.Equal("typical-week-sessions", Sound.Setup(FactSet.Empty.With(SetupFacets.TypicalWeek.Of(week.Id), week)).Single().Id);
        Assert.Equal("place-wrong", Sound.Setup(FactSet.Empty.With(SetupFacets.TypicalWeek.Of(new("other")), week)).Single().Id);
        var exercise = new Exercise(new("x"), "Squat with chains", MovementPattern.Squat, LoadedBy.Bar, [], [], []);
        Assert.Equal("exercise-muscles", Sound.Setup(FactSet.Empty.With(SetupFacets.Exercise.Of(exercise.Id), exercise)).Single().Id);
        Assert.Equal("place-wrong", Sound.Setup(FactSet.Empty.With(SetupFacets.Exercise.Of(new("other")), exercise with { Muscles = [Muscle.Glutes] })).Single().Id);
        Assert.Equal("zone-unknown", Sound.Setup(FactSet.Empty.With(SetupFacets.Locale.Of(default), new LocaleSettings(Zone: "x"))).Single().Id);
        Assert.Equal("place-wrong", Sound.Setup(FactSet.Empty.With(new Key("frame", ""), Season.Frame)).Single().Id);
    }
}
