using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Wire.Tests;

public class RoundTripTests
{
    private static readonly ValueList<WeekId> Weeks = new(Enumerable.Range(1, 6).Select(n => new WeekId($"w{n}")));

    private static Season Started() => Apply(Season.Empty(new("s1")), new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Weeks, new("Harbour Vale", "2027-28", "HV")));

    private static Season Apply(Season season, SeasonEdit edit) =>
        Decider.Decide(season, edit) is Accepted accepted ? season.With(accepted.Step) : throw new InvalidOperationException(edit.ToString());

    private static Season Painted()
    {
        var season = Started();
        foreach (var edit in new SeasonEdit[]
        {
            new PaintPhase(new("w1"), new("w4"), new("p1"), PhaseKind.GeneralPreparation, new("p2")),
            new SetWeekLoad(new("w2"), new("w2"), new Load(2432)),
            new SetEmphasis(new("w2"), new("w3"), new("power"), Emphasis.Focus),
            new SetMatch(new Match(new("m1"), new(2027, 7, 10), KickOff: new(18, 30), Opponent: "Öster & \"Co\"", Venue: Venue.Away)),
            new ImportFixtures(new([new Match(new("m2"), new(2027, 7, 17), Opponent: "Brovik", Venue: Venue.Home, Source: new MatchSource("7"))]), "league.csv"),
            new MoveMatch(new("m2"), new(2027, 7, 18), KickOff: new(16, 0)),
            new SetEvent(new Event(new("e1"), EventKind.Holiday, "Summer", new DaySpan(new(2027, 7, 12), new(2027, 7, 14)), Training: new Percent(40))),
            new ImportEvents(new([new Event(new("e2"), EventKind.Camp, "Camp", new DaySpan(new(2027, 7, 16), new(2027, 7, 18)), Source: new EventSource("school.csv", "Camp"))]), new([new TestDay(new("t1"), new(2027, 7, 20), "Jumps", Source: new EventSource("school.csv", "Jumps"))]), "school.csv"),
            new SetEvent(new Event(new("e2"), EventKind.Camp, "Camp", new DaySpan(new(2027, 7, 17), new(2027, 7, 18)))),
            new SetTestDay(new TestDay(new("t1"), new(2027, 7, 21), "Jumps")),
            new SetSession(new Session(new("n1"), new(2027, 7, 6), DaySlot.Afternoon, SessionKind.LowerStrength, new Minutes(60), new Rpe(7), Start: new(16, 30), Doses: new([new Dose(new("maximum-strength"), 9, new Percent(85))]), Waves: new([new Wave("Early", new(15, 30))]))),
            new SetPractices(new("w1"), new("w1"), new Practices(3, new Minutes(90), new Rpe(5.5m))),
            new SetTrack(new Track(new("t1"), "Gym room", TrackForm.Text)),
            new SetCells(new([new TrackCell(new("t1"), CellPlace.Of(new WeekId("w1")), "main hall 16:00")])),
        }) season = Apply(season, edit);
        return season;
    }

    [Fact]
    public void A_season_file_reads_back_as_it_was_written()
    {
        var season = Painted();
        var text = SeasonFile.Write(season, Setup.Empty(new("t1")));
        var read = SeasonFile.Read(System.Text.Encoding.UTF8.GetBytes(text), out var problem);
        Assert.Null(problem);
        Assert.Equal(season, read!.Season);
        Assert.Equal(text, SeasonFile.Write(read.Season, read.Setup));
        Assert.Null(read.Edition);
    }

    [Fact]
    public void A_published_version_says_which_one_it_is_and_none_that_the_season_does_not_have()
    {
        var season = Painted();
        season = season.With(Assert.IsType<Accepted>(Decider.Decide(season, new Publish("Agreed"))).Step);
        var edition = new Edition(season.LastPublication, new(2027, 10, 11));
        var text = SeasonFile.Write(season, Setup.Empty(new("t1")), edition);
        var read = SeasonFile.Read(System.Text.Encoding.UTF8.GetBytes(text), out var problem);
        Assert.Null(problem);
        Assert.Equal(edition, read!.Edition);
        Assert.Equal(text, SeasonFile.Write(read.Season, read.Setup, read.Edition));

        var other = text.Replace("\"edition\": {\n    \"version\": 1", "\"edition\": {\n    \"version\": 2", StringComparison.Ordinal);
        Assert.NotEqual(text, other, StringComparer.Ordinal);
        Assert.Null(SeasonFile.Read(System.Text.Encoding.UTF8.GetBytes(other), out problem));
        Assert.Equal("The file says it is version 2, which this season does not have.", problem!.What);
    }

    [Fact]
    public void Following_steps_gives_the_fingerprint_of_the_whole()
    {
        var season = Started();
        var step = Step.Between(season.Facts, Painted().Facts);
        Assert.Equal(FactHash.Of(Painted().Facts), FactHash.Of(season.Facts).Follow(step));
        Assert.NotEqual(FactHash.Of(season.Facts), FactHash.Of(Painted().Facts));
        Assert.Equal(step, LogText.ReadStep(LogText.Of(step)));
    }

    [Fact]
    public void Weeks_of_a_hand_written_edit_may_be_numbers_or_days()
    {
        var edit = EditLines.Read("""{"edit":"setWeekLoad","first":2,"last":"2027-07-20","load":2000}""", Started(), out var problem);
        Assert.Null(problem);
        Assert.Equal(new SetWeekLoad(new("w2"), new("w3"), new Load(2000)), edit);
    }
}
