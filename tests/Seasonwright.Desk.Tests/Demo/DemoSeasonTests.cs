using System.Security.Cryptography;
using System.Text;
using CsCheck;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Tests.Demo;

public class DemoSeasonTests
{
    private static readonly DateOnly Anchor = new(2027, 7, 5);
    private static readonly (Season Season, Setup Setup) Demo = Played(DemoSeason.Make(Anchor));

    internal static (Season Season, Setup Setup) Played(DemoSeason demo)
    {
        var setup = demo.Setup.Aggregate(Setup.Empty(new("t1")), (now, edit) => now.With(StepOf(Decider.Decide(now, edit), edit)));
        var season = demo.Edits.Aggregate(Season.Empty(demo.Id), (now, edit) => now.With(StepOf(Decider.Decide(now, edit), edit)));
        return (season, setup);
    }

    private static Step StepOf(Decision decision, Edit edit)
    {
        var accepted = Assert.IsType<Accepted>(decision);
        Assert.False(accepted.Step.IsNothing, $"does nothing: {edit}");
        return accepted.Step;
    }

    private static string Bytes(DateOnly anchor)
    {
        var (season, setup) = Played(DemoSeason.Make(anchor));
        return Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(SeasonFile.Write(season, setup))));
    }

    [Fact]
    public void The_same_anchor_gives_the_same_bytes_and_another_other_ones()
    {
        Assert.Equal(Bytes(Anchor), Bytes(Anchor));
        Assert.Equal(Bytes(Anchor), Bytes(Anchor.AddDays(3)));
        Assert.NotEqual(Bytes(Anchor), Bytes(Anchor.AddDays(7)), StringComparer.Ordinal);
    }

    [Fact]
    public void Another_anchor_shifts_every_day_and_changes_nothing_else()
    {
        var (later, _) = Played(DemoSeason.Make(Anchor.AddDays(70)));
        Assert.Equal(Demo.Season.Days!.Value.Shift(70), later.Days);
        Assert.Equal(Demo.Season.Matches.Select(match => (match.Days?.Shift(70), match.Opponent, match.Round)), later.Matches.Select(match => (match.Days, match.Opponent, match.Round)));
        Assert.Equal(Demo.Season.Events.Select(item => (item.Title, item.Days.Shift(70))).Order(), later.Events.Select(item => (item.Title, item.Days)).Order());
        Assert.Equal(Demo.Season.TestDays.Select(test => test.Day.AddDays(70)), later.TestDays.Select(test => test.Day));
        Assert.Equal(Demo.Season.Weeks.Select(week => Demo.Season.TargetOf(week.Id)), later.Weeks.Select(week => later.TargetOf(week.Id)));
    }

    [Fact]
    public void Today_lies_in_week_16_whatever_the_day() =>
        Gen.Int[new DateOnly(1951, 1, 1).DayNumber, new DateOnly(2148, 12, 31).DayNumber].Select(DateOnly.FromDayNumber).Sample(today =>
        {
            var anchor = DemoSeason.AnchorFor(today);
            Assert.Equal(DayOfWeek.Monday, anchor.DayOfWeek);
            var demo = DemoSeason.Make(anchor);
            var started = Season.Empty(demo.Id).With(StepOf(Decider.Decide(Season.Empty(demo.Id), demo.Edits[0]), demo.Edits[0]));
            Assert.Equal(16, started.WeekOf(today)!.Number);
        }, iter: 1000);

    [Fact]
    public void Every_week_has_a_phase_a_block_a_kind_a_target_and_practices() => Assert.All(Demo.Season.Weeks, week =>
    {
        Assert.NotNull(Demo.Season.PhaseOf(week));
        Assert.NotNull(Demo.Season.BlockOf(week));
        Assert.NotNull(Demo.Season.KindOf(week.Id));
        Assert.NotNull(Demo.Season.TargetOf(week.Id));
        Assert.NotNull(Demo.Season.PracticesOf(week.Id));
    });

    [Fact]
    public void Everything_lies_inside_the_season()
    {
        var outside = Demo.Season.Outside;
        Assert.Empty(outside.Matches);
        Assert.Empty(outside.Undated);
        Assert.Empty(outside.Events);
        Assert.Empty(outside.TestDays);
        Assert.Empty(outside.Notes);
        Assert.Empty(outside.Weeks);
    }

    [Fact]
    public void The_league_is_played_once_at_home_and_once_away_against_thirteen_clubs()
    {
        var league = Demo.Season.Matches.Where(match => match.Competition == "League").ToList();
        Assert.Equal(26, league.Count);
        Assert.Equal(13, league.Count(match => match.Venue == Venue.Home));
        Assert.All(league.GroupBy(match => match.Opponent, StringComparer.Ordinal), pair => Assert.Equal([Venue.Home, Venue.Away], pair.Select(match => match.Venue!.Value).Order()));
    }

    [Fact]
    public void No_match_lies_on_a_holiday_and_none_within_72_hours_of_another()
    {
        var holidays = Demo.Season.Events.Where(item => item.Kind == EventKind.Holiday).ToList();
        Assert.Equal(2, holidays.Count);
        Assert.All(Demo.Season.Matches, match => Assert.All(holidays, holiday => Assert.False(holiday.Days.Overlaps(match.Days!.Value))));
        // Start to start with two hours for the match: four calendar days are always enough, three are when the later one starts no earlier.
        foreach (var (a, b) in Demo.Season.Matches.Zip(Demo.Season.Matches.Skip(1)))
            Assert.True(b.Day!.Value.DayNumber - a.Days!.Value.Last.DayNumber >= 3, $"{a.Day} {a.Opponent} then {b.Day} {b.Opponent}");
    }

    [Fact]
    public void It_shows_every_kind_of_match_a_coach_meets()
    {
        var matches = Demo.Season.Matches.ToList();
        Assert.All(new[] { MatchStatus.Confirmed, MatchStatus.Provisional, MatchStatus.Conditional, MatchStatus.Window }, status => Assert.Contains(matches, match => match.Status == status));
        Assert.All(Enum.GetValues<Importance>(), importance => Assert.Contains(matches, match => match.Importance == importance));
        Assert.Equal(3, matches.Count(match => match.Series is { BestOf: 3 }));
        Assert.Equal(MatchStatus.Confirmed, matches.Single(match => match is { Competition: "Cup", Round: "Second round" }).Status);
        Assert.All(matches.Where(match => match.Day < Demo.Season.Weeks[15].Days.First), match => Assert.NotNull(match.Result));
        Assert.All(matches.Where(match => match.Day >= Demo.Season.Weeks[15].Days.First), match => Assert.Null(match.Result));
    }

    [Fact]
    public void Kinds_tell_the_weeks_matches() => Assert.All(Demo.Season.Weeks, week =>
    {
        var count = Demo.Season.MatchesIn(week).Count(match => match.Importance != Importance.Friendly);
        var kind = Demo.Season.KindOf(week.Id);
        Assert.True(kind is WeekKind.Congested or WeekKind.Taper || count < 2, $"week {week.Number}: {count} matches, {kind}");
        Assert.True(kind != WeekKind.Congested || count == 2, $"week {week.Number}: {count} matches, {kind}");
        Assert.True(kind != WeekKind.Competition || count == 1, $"week {week.Number}: {count} matches, {kind}");
    });

    [Fact]
    public void Matches_and_practices_leave_room_for_our_work_in_every_week() => Assert.All(Demo.Season.Weeks, week =>
    {
        var load = WeekLoad.Of(Demo.Season, Demo.Setup, week);
        Assert.True(load.Match.Au + load.Practice!.Value.Au < load.Target!.Value.Au, $"week {week.Number}: {load}");
    });

    [Fact]
    public void It_is_as_rich_as_a_real_season()
    {
        Assert.InRange(Demo.Season.Weeks.Length, 44, 48);
        Assert.Equal(3, Demo.Season.Goals.Count());
        Assert.Equal(DemoSeason.Make(Anchor).People.Keys.ToHashSet(), Demo.Season.Staff.Select(staff => staff.Person).ToHashSet());
        Assert.Equal(Enum.GetValues<TrackForm>().Order(), Demo.Season.Tracks.Select(track => track.Form).Distinct().Order());
        Assert.Equal(Enum.GetValues<PhaseKind>().Order(), Demo.Season.Phases.Select(run => run.Phase.Kind).Distinct().Order());
        Assert.Equal(Enum.GetValues<WeekKind>().Except([WeekKind.Reduced]).Order(), Demo.Season.Weeks.Select(week => Demo.Season.KindOf(week.Id)!.Value).Distinct().Order());
        Assert.Single(Demo.Season.Groups);
        Assert.Contains(Demo.Season.Facts.All(SeasonFacets.Publication), version => version.Value is { Number: 1, Name: "Pre-season" });
        Assert.All(Demo.Setup.Qualities, quality => Assert.Contains(Demo.Season.Weeks, week => Demo.Season.EmphasisOf(week.Id, quality.Id) > Emphasis.None));
    }
}
