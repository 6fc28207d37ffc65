using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

public class NextSeasonLaws
{
    private static readonly string[] Behind = ["match", "session", "note", "week.note", "week.wish", "week.lock", "week.ready", "publication", "accepted"];

    private static readonly string[] Dated = ["frame", "team", "event", "test", "home", "goal", "track.cell", "week.kind", "brief"];

    private static readonly EventKind[] Recurring = [EventKind.Holiday, EventKind.Exams, EventKind.Camp, EventKind.NationalTeamWindow];

    [Fact]
    public void The_plan_moves_by_whole_weeks_onto_the_first_competition_match()
    {
        var aligned = 0;
        Gen.Select(AnySeason.Season, Gen.Int[0, 160], Gen.Int[200, 600]).Sample((last, at, later) =>
        {
            var official = new SetMatch(new Match(new("official"), last.Frame.FirstDay.AddDays(at)));
            if (Decider.Decide(last, official) is Accepted accepted) last = last.With(accepted.Step);
            if (NextSeason.FirstCompetitionMatch(last) is not { } first) return;
            var opening = first.AddDays(later);
            Assert.True(NextSeason.TryFrom(last, opening, "2028-29", out var facts));
            var decision = Decider.Decide(Season.Empty(new("next")), new AdoptSeason(facts, "2027-28"));
            if (decision is Refused) return; // Moved out of every bound.
            Interlocked.Increment(ref aligned);
            var next = new Season(new("next"), facts);

            var days = next.Frame.FirstDay.DayNumber - last.Frame.FirstDay.DayNumber;
            Assert.Equal(0, days % 7);
            Assert.Equal(WeekGrid.StartOfWeek(opening, last.Frame.WeekStart), WeekGrid.StartOfWeek(first.AddDays(days), last.Frame.WeekStart));
            Assert.Equal(last.Weeks.Select(week => (week.Id, week.Days.Shift(days))), next.Weeks.Select(week => (week.Id, week.Days)));
            if (next.WeekOf(opening) is { } week) Assert.Equal(last.WeekOf(first)!.Id, week.Id);

            Assert.DoesNotContain(next.Facts.Keys, key => Behind.Contains(key.Facet, StringComparer.Ordinal));
            Assert.Empty(next.AllMatches);
            Assert.Equal(Carried(last), Carried(next));
            Assert.Equal(
                last.AllEvents.Where(item => Recurring.Contains(item.Kind) && item.Source?.Vanished != true).Select(item => (item.Id, item.Title, item.Days.Shift(days), item.For, item.Training, item.AsListed().Source, true)),
                next.AllEvents.Select(item => (item.Id, item.Title, item.Days, item.For, item.Training, item.Source, item.Provisional)));
            Assert.All(next.AllEvents, item => Assert.Equal((null, null, null, null, null), (item.Part, item.Place, item.Nights, item.Legs, item.Note)));
            Assert.Equal(last.Facts.All(SeasonFacets.WeekKind).Where(kind => kind.Value is not (WeekKind.Competition or WeekKind.Congested)), next.Facts.All(SeasonFacets.WeekKind));
            Assert.Equal(last.Goals.Select(goal => goal with { From = null, By = goal.By?.AddDays(days) }), next.Goals);
            Assert.Equal(last.Brief with { Tapers = null, Start = null }, next.Brief);
            var shares = NextSeason.Shares(last);
            Assert.Equal(next.Facts.Keys.Where(IsShared).GroupBy(key => key.Facet, StringComparer.Ordinal).Select(family => (family.Key, family.Count())), Counts(shares, comesAlong: true));
            Assert.Equal(last.Facts.Keys.Count(IsShared), shares.Sum(share => share.Count));
            Assert.Equal(last.Facts.All(SeasonFacets.TestDay).Select(test => test.Value.Day.AddDays(days)), next.Facts.All(SeasonFacets.TestDay).Select(test => test.Value.Day));
            Assert.Equal(last.HomeProgrammes.Select(home => home with { FirstDay = home.FirstDay.AddDays(days) }), next.HomeProgrammes);
            Assert.Equal(last.Facts.All(SeasonFacets.TrackCell).Count(), next.Facts.All(SeasonFacets.TrackCell).Count());
            Assert.Equal("2028-29", next.Team.Title);
        }, iter: 300);
        Assert.True(aligned > 0);
    }

    private static bool IsShared(Key key) => key.Facet is not ("frame" or "team");

    private static IEnumerable<(string, int)> Counts(IEnumerable<SeasonShare> shares, bool comesAlong) =>
        shares.Where(share => share.ComesAlong == comesAlong).Select(share => (share.Facet, share.Count)).OrderBy(share => share.Facet, StringComparer.Ordinal);

    [Fact]
    public void What_happened_once_stays_behind_and_is_named()
    {
        var days = new DaySpan(new(2027, 8, 2), new(2027, 8, 6));
        var week = new WeekId("w3");
        var season = Started(
            new SetMatch(new Match(new("m"), new DateOnly(2027, 9, 4))),
            new SetEvent(new Event(new("camp"), EventKind.Camp, "Lake camp", days, Part: "from noon", Place: "Ostervik", Nights: 4, Legs: new([new Leg(days.First, "Harbour Vale", "Ostervik", new(8, 0))]), Note: "Own mats")),
            new SetEvent(new Event(new("wedding"), EventKind.Other, "Wedding of a player", days)),
            new SetEvent(new Event(new("ferry"), EventKind.Travel, "Ferry north", days.Shift(20))),
            new SetWeekKind(week, week, WeekKind.Congested),
            new SetWeekKind(new("w4"), new("w4"), WeekKind.Unloading),
            new SetGoal(new Goal(new("g"), 1, "jump, cm", 31, 33, new(2027, 11, 1))));
        Assert.True(NextSeason.TryFrom(season, new(2028, 9, 2), null, out var facts));
        var next = new Season(new("n"), facts);
        Assert.Equal(new Event(new("camp"), EventKind.Camp, "Lake camp", days.Shift(364), Provisional: true), Assert.Single(next.AllEvents));
        Assert.Equal((null, WeekKind.Unloading), (next.KindOf(week), next.KindOf(new("w4"))));
        Assert.Equal((null, 33m, new DateOnly(2028, 10, 30)), next.Goals.Select(goal => (goal.From, goal.To, goal.By)).Single());
        Assert.Equal(
            [("goal", 1), ("event", 1), ("week.kind", 1), ("match", 1), ("event", 2), ("week.kind", 1)],
            NextSeason.Shares(season).Select(share => (share.Facet, share.Count)));
        Assert.EndsWith(": 2 (Wedding of a player; Ferry north)", NextSeason.Shares(season)[4].Words, StringComparison.Ordinal);
        Assert.Equal([true, true, true, false, false, false], NextSeason.Shares(season).Select(share => share.ComesAlong));
    }

    private static FactSet Carried(Season season) => season.Facts.Keys
        .Where(key => !Behind.Contains(key.Facet, StringComparer.Ordinal) && !Dated.Contains(key.Facet, StringComparer.Ordinal))
        .Aggregate(FactSet.Empty, (facts, key) => facts.With(key, season.Facts[key]));

    private static Season Started(params SeasonEdit[] edits) =>
        History.After([new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, Enumerable.Range(1, 20).Select(n => new WeekId($"w{n}")).ToValueList(), new("Harbour Vale")), .. edits]);

    [Fact]
    public void Friendlies_and_matches_called_off_align_nothing()
    {
        var season = Started(
            new SetMatch(new Match(new("a"), new DateOnly(2027, 8, 1), Importance: Importance.Friendly)),
            new SetMatch(new Match(new("b"), new DateOnly(2027, 8, 8), Status: MatchStatus.Cancelled)),
            new SetMatch(new Match(new("c"), new DateOnly(2027, 8, 15), new DateOnly(2027, 8, 20), Status: MatchStatus.Window)));
        Assert.False(NextSeason.TryFrom(season, new(2028, 9, 2), null, out _));
        var official = History.After(season, new SetMatch(new Match(new("d"), new DateOnly(2027, 9, 4))));
        Assert.True(NextSeason.TryFrom(official, new(2028, 9, 2), null, out var facts));
        Assert.Equal(new DateOnly(2028, 7, 3), new Season(new("n"), facts).Frame.FirstDay);
    }

    /// <summary>A past bug: a day beyond the calendar threw.</summary>
    [Fact]
    public void An_impossible_day_aligns_nothing()
    {
        var season = Started(new SetMatch(new Match(new("d"), new DateOnly(2027, 9, 4))));
        Assert.False(NextSeason.TryFrom(season, DateOnly.MinValue, null, out _));
        Assert.False(NextSeason.TryFrom(season, DateOnly.MaxValue, null, out _));
    }

    /// <summary>Two cells a week apart, moved by a week: neither may overwrite the other.</summary>
    [Fact]
    public void Cells_by_day_move_together()
    {
        var track = new Track(new("t"), "Room", TrackForm.Text, TrackGrain.Day);
        var (monday, next) = (new DateOnly(2027, 7, 5), new DateOnly(2027, 7, 12));
        var season = Started(
            new SetMatch(new Match(new("d"), new DateOnly(2027, 9, 4))),
            new SetTrack(track),
            new SetCells(new([new(track.Id, CellPlace.Of(monday), "small"), new(track.Id, CellPlace.Of(next), "large")])));
        Assert.True(NextSeason.TryFrom(season, new(2027, 9, 11), null, out var facts));
        var moved = new Season(new("n"), facts);
        Assert.Equal((null, "small", "large"), (moved.CellOf(track.Id, CellPlace.Of(monday)), moved.CellOf(track.Id, CellPlace.Of(next)), moved.CellOf(track.Id, CellPlace.Of(next.AddDays(7)))));
    }
}
