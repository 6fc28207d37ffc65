using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>Redating and resizing: what moves, what stays, and that nothing is lost.</summary>
public class FrameLaws
{
    private static readonly ValueList<WeekId> NoWeeks = ValueList<WeekId>.Empty;

    private static Season? Done(Season season, SeasonEdit edit) => Decider.Decide(season, edit) is Accepted accepted ? season.With(accepted.Step) : null;

    private static FactSet WithoutFrame(Season season) => season.Facts.With(SeasonFacets.Frame.Of(default), null);

    private static IReadOnlyList<WeekId> Known(Season season) => [.. season.Frame.Before, .. season.Frame.Weeks, .. season.Frame.After];

    private static int NumberOf(Season season, WeekId week) => Known(season).ToList().IndexOf(week) - season.Frame.Before.Count + 1;

    /// <summary>The seven days of a column, as if the first were not cut.</summary>
    private static DaySpan WholeWeek(Frame frame, int number)
    {
        var first = WeekGrid.StartOfWeek(frame.FirstDay, frame.WeekStart).AddDays(7 * (number - 1));
        return new DaySpan(first, first.AddDays(6));
    }

    [Fact]
    public void Moving_by_whole_weeks_takes_everything_planned_along_and_nothing_dated() => Gen.Select(AnySeason.Season, Gen.Int[-40, 40]).Sample((season, weeks) =>
    {
        var edit = new Redate(season.Frame.FirstDay.AddDays(7 * weeks), season.Frame.WeekStart, RedatePlan.Moves, NoWeeks);
        if (Done(season, edit) is not { } moved) return;
        Assert.Equal(season.Weeks.Select(week => (week.Number, week.Id, week.Days.Shift(7 * weeks))), moved.Weeks.Select(week => (week.Number, week.Id, week.Days)));
        Assert.Equal(
            season.Facts.All(SeasonFacets.TestDay).Select(test => (test.Value with { Day = test.Value.Day.AddDays(7 * weeks) }).ListedAs(test.Value.AsListed())),
            moved.Facts.All(SeasonFacets.TestDay).Select(test => test.Value));
        Assert.Equal(season.AllSessions.Select(session => session with { Day = session.Day.AddDays(7 * weeks) }), moved.AllSessions);
        Assert.All(Step.Between(season.Facts, moved.Facts).Changes, change => Assert.True(change.Key.Facet is "frame" or "test" or "session"));
        Assert.Equal(season, Done(moved, edit with { FirstDay = season.Frame.FirstDay }));
    }, iter: 300);

    [Fact]
    public void Moving_to_any_day_keeps_the_list_of_weeks_and_the_weekdays_of_tests() => Gen.Select(AnySeason.Season, Gen.Int[-100, 100], Gen.Enum<DayOfWeek>()).Sample((season, days, weekStart) =>
    {
        if (Done(season, new Redate(season.Frame.FirstDay.AddDays(days), weekStart, RedatePlan.Moves, NoWeeks)) is not { } moved) return;
        Assert.Equal(season.Frame.Weeks, moved.Frame.Weeks);
        Assert.Equal(season.Phases.Select(run => (run.Id, run.First.Number, run.Last.Number)), moved.Phases.Select(run => (run.Id, run.First.Number, run.Last.Number)));
        foreach (var ((_, was), (_, now)) in season.Facts.All(SeasonFacets.TestDay).Zip(moved.Facts.All(SeasonFacets.TestDay)))
        {
            Assert.Equal(was.Day.DayOfWeek, now.Day.DayOfWeek);
            // Not more than half a week from the way the season went.
            Assert.InRange(now.Day.DayNumber - was.Day.DayNumber - days, -9, 9);
        }
        foreach (var (was, now) in season.AllSessions.Zip(moved.AllSessions)) Assert.Equal((was.Id, was.Day.DayOfWeek), (now.Id, now.Day.DayOfWeek));
        Assert.Equal(season, Done(moved, new Redate(season.Frame.FirstDay, season.Frame.WeekStart, RedatePlan.Moves, NoWeeks)));
    }, iter: 300);

    [Fact]
    public void A_plan_that_stays_goes_to_the_weeks_that_hold_most_of_its_days() => Gen.Select(AnySeason.Season, Gen.Int[-100, 100], Gen.Enum<DayOfWeek>()).Sample((season, days, weekStart) =>
    {
        var fresh = Enumerable.Range(0, 40).Select(n => new WeekId($"fresh{n}")).ToValueList();
        if (Done(season, new Redate(season.Frame.FirstDay.AddDays(days), weekStart, RedatePlan.Stays, fresh)) is not { } stayed) return;
        Assert.Equal(WithoutFrame(season), WithoutFrame(stayed));
        Assert.Equal(season.Frame.Weeks.Count, stayed.Frame.Weeks.Count);
        Assert.Equal(Known(season), Known(stayed).Intersect(Known(season)));
        foreach (var week in Known(season))
        {
            var (was, now) = (WholeWeek(season.Frame, NumberOf(season, week)), WholeWeek(stayed.Frame, NumberOf(stayed, week)));
            Assert.InRange(was.SharedDays(now), 4, 7);
        }
    }, iter: 300);

    [Fact]
    public void What_stayed_outside_returns_when_the_season_comes_back() => Gen.Select(AnySeason.Season, Gen.Int[-100, 100], Gen.Enum<DayOfWeek>()).Sample((season, days, weekStart) =>
    {
        ValueList<WeekId> Fresh(string name) => Enumerable.Range(0, 40).Select(n => new WeekId($"{name}{n}")).ToValueList();
        if (Done(season, new Redate(season.Frame.FirstDay.AddDays(days), weekStart, RedatePlan.Stays, Fresh("there"))) is not { } away) return;
        var back = Done(away, new Redate(season.Frame.FirstDay, season.Frame.WeekStart, RedatePlan.Stays, Fresh("back")))!;
        Assert.Equal(season.Frame.Weeks, back.Frame.Weeks);
        Assert.Equal(season.Frame.Grid, back.Frame.Grid);
        Assert.Equal(season.Outside.Weeks.Select(week => week.Id), back.Outside.Weeks.Select(week => week.Id));
        Assert.Equal(season.Phases.Select(run => (run.Id, run.First, run.Last)), back.Phases.Select(run => (run.Id, run.First, run.Last)));
    }, iter: 300);

    [Fact]
    public void Weeks_cut_off_wait_outside_with_their_plan_and_return_first() => Gen.Select(AnySeason.Season, Gen.Int[1, 24]).Sample((season, count) =>
    {
        if (count > season.Weeks.Length) return;
        var cut = Done(season, new Resize(count, NoWeeks))!;
        Assert.Equal(season.Weeks[..count].Select(week => week.Id), cut.Weeks.Select(week => week.Id));
        Assert.Equal(WithoutFrame(season), WithoutFrame(cut));
        Assert.Equal(season, Done(cut, new Resize(season.Weeks.Length, NoWeeks)));
    }, iter: 300);

    [Fact]
    public void Outside_holds_every_planned_week_that_has_no_place() => AnySeason.Season.Sample(season =>
    {
        var planned = season.Facts.Keys
            .Where(key => key.Facet.StartsWith("week.", StringComparison.Ordinal) && key.Facet is not ("week.lock" or "week.ready"))
            .Select(key => key.Subject.Split(':')[0])
            .Concat(season.Facts.Keys.Where(key => key.Facet == "track.cell" && key.Subject.Contains(":w=", StringComparison.Ordinal)).Select(key => key.Subject.Split('=')[1]))
            .ToHashSet(StringComparer.Ordinal);
        planned.ExceptWith(season.Weeks.Select(week => week.Id.Text));
        Assert.Equal(planned.Order(StringComparer.Ordinal), season.Outside.Weeks.Select(week => week.Id.Text).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.DoesNotContain(season.Outside.Weeks, week => week.Number >= 1 && week.Number <= season.Weeks.Length);
    }, iter: 300);

    [Fact]
    public void A_season_that_starts_three_weeks_later_keeps_its_dates_or_its_order()
    {
        var season = History.After(
            new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Weeks(6), new("Harbour Vale")),
            new SetWeekLoad(new("w1"), new("w1"), new(1000)),
            new SetWeekLoad(new("w5"), new("w5"), new(5000)),
            new SetMatch(new Match(new("m"), new DateOnly(2027, 7, 10))),
            new SetTestDay(new TestDay(new("d"), new DateOnly(2027, 7, 8), "Jump")));

        var moved = History.After(season, new Redate(new(2027, 7, 26), DayOfWeek.Monday, RedatePlan.Moves, NoWeeks));
        Assert.Equal(new DateOnly(2027, 7, 26), moved.Week(new("w1"))!.Days.First);
        Assert.Equal(new DateOnly(2027, 7, 29), moved.TestDays.Single().Day);
        Assert.Equal("m", moved.Outside.Matches.Single().Id.Text);

        var stayed = History.After(season, new Redate(new(2027, 7, 26), DayOfWeek.Monday, RedatePlan.Stays, Weeks(3, "n")));
        Assert.Equal("w4 w5 w6 n1 n2 n3", string.Join(' ', stayed.Weeks.Select(week => week.Id)));
        Assert.Equal(new DateOnly(2027, 8, 2), stayed.Week(new("w5"))!.Days.First);
        Assert.Equal((-2, "w1"), (stayed.Outside.Weeks.Single().Number, stayed.Outside.Weeks.Single().Id.Text));
        Assert.Equal(new DateOnly(2027, 7, 8), stayed.Outside.TestDays.Single().Day);
        Assert.Equal(1000, stayed.TargetOf(new("w1"))!.Value.Au);

        static ValueList<WeekId> Weeks(int count, string prefix = "w") => Enumerable.Range(1, count).Select(n => new WeekId($"{prefix}{n}")).ToValueList();
    }
}
