using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

public class NextSeasonLaws
{
    private static readonly string[] Behind = ["match", "note", "week.note", "week.lock", "week.ready", "publication"];

    private static readonly string[] Dated = ["frame", "team", "event", "test", "goal", "track.cell"];

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
            Assert.Equal(last.AllEvents.Select(item => (item.Id, item.Days.Shift(days), true)), next.AllEvents.Select(item => (item.Id, item.Days, item.Provisional)));
            Assert.Equal(last.Facts.All(SeasonFacets.TestDay).Select(test => test.Value.Day.AddDays(days)), next.Facts.All(SeasonFacets.TestDay).Select(test => test.Value.Day));
            Assert.Equal(last.Facts.All(SeasonFacets.TrackCell).Count(), next.Facts.All(SeasonFacets.TrackCell).Count());
            Assert.Equal("2028-29", next.Team.Title);
        }, iter: 300);
        Assert.True(aligned > 0);
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
