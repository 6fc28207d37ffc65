using Seasonwright.Core.Facts;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>What holds for every season that edits have made.</summary>
internal static class Whole
{
    public static void Check(Season season, Setup setup)
    {
        CheckFrame(season);
        CheckFacts(season);
        CheckReading(season, setup);
    }

    private static IReadOnlyList<WeekId> Known(Season season) => [.. season.Frame.Before, .. season.Frame.Weeks, .. season.Frame.After];

    private static void CheckFrame(Season season)
    {
        Assert.InRange(season.Frame.Weeks.Count, 1, Frame.MostWeeks);
        Assert.Equal(Known(season).Count, Known(season).Distinct().Count());
        Assert.True(Frame.PossibleDays.Contains(season.Frame.FirstDay));
    }

    /// <summary>Over all weeks in their order, those outside included, no run is broken, none is empty and none lacks its phase or block.</summary>
    public static void CheckRuns(Season season)
    {
        CheckRuns(season, SeasonFacets.WeekPhase, SeasonFacets.Phase);
        CheckRuns(season, SeasonFacets.WeekBlock, SeasonFacets.Block);
    }

    private static void CheckRuns<TId, TRun>(Season season, Facet<WeekId, TId> mark, Facet<TId, TRun> runs)
        where TId : struct, ISubject<TId>
        where TRun : class
    {
        var marks = Known(season).Select(week => season.Facts.FindValue(mark, week)).ToList();
        var starts = marks.Where((id, index) => id is not null && (index == 0 || !Equals(marks[index - 1], id))).ToList();
        Assert.Equal(starts.Count, starts.Distinct().Count());
        Assert.Equal(
            season.Facts.All(runs).Select(run => run.Subject.ToString()!),
            starts.Select(id => id.ToString()!).Order(StringComparer.Ordinal),
            StringComparer.Ordinal);
    }

    private static void CheckFacts(Season season)
    {
        foreach (var key in season.Facts.Keys)
        {
            var facet = Assert.Single(SeasonFacets.All, facet => facet.Name == key.Facet);
            Assert.True(facet.IsSubject(key.Subject), key.ToString());
            Assert.IsType(facet.ValueType, season.Facts[key]);
            // What has an id lies at its id, so no two can have the same.
            if (facet.ValueType.GetProperty("Id") is { } id) Assert.Equal(key.Subject, id.GetValue(season.Facts[key])!.ToString());
        }
    }

    /// <summary>Whatever a page asks of a season has an answer.</summary>
    private static void CheckReading(Season season, Setup setup)
    {
        Assert.Equal(season.Frame.Weeks.Count, season.Weeks.Length);
        Assert.Equal(season.Frame.Weeks.Count, season.Weeks.Select(week => season.Week(week.Id)).Distinct().Count());
        foreach (var week in season.Weeks)
        {
            Assert.Same(week, season.WeekOf(week.Days.First));
            Assert.Same(week, season.WeekOf(week.Days.Last));
            var load = WeekLoad.Of(season, setup, week);
            var days = DayLoad.Of(season, setup, week);
            Assert.Equal(week.Days.Days(), days.Select(day => day.Day));
            Assert.Equal(load.Match.Au, days.Sum(day => day.Match.Au));
            Assert.Equal(load.Placed?.Au ?? 0, days.Sum(day => day.Ours.Au));
            Assert.True(days.All(day => day.Practice is null) || load.Practice!.Value.Au == days.Sum(day => day.Practice!.Value.Au));
            Assert.True(load.LaidOut is null || load.Placed is not null);
            Assert.True(load.Ours is null || load.Ours.Value.Au <= load.Target!.Value.Au);
            Assert.True(season.PhaseOf(week) is null || season.Phases.Contains(season.PhaseOf(week)!));
            Assert.True(season.BlockOf(week) is null || season.BlockOf(week)!.Pattern.Length >= 0);
            Assert.True(week.IsoWeek.Days.SharedDays(week.Days) * 2 >= week.Days.Length);
        }
        // Inside, outside or undated: every match, event, test day and note is found exactly once.
        var outside = season.Outside;
        Assert.Equal(season.AllMatches.Select(match => match.Id.Text).Order(StringComparer.Ordinal),
            season.Matches.Concat(outside.Matches).Concat(outside.Undated).Select(match => match.Id.Text).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(season.AllEvents.Count(), season.Events.Count() + outside.Events.Length);
        Assert.Equal(season.Facts.All(SeasonFacets.TestDay).Count(), season.TestDays.Count() + outside.TestDays.Length);
        Assert.Equal(season.AllSessions.Length, season.Weeks.Sum(week => season.SessionsIn(week).Count()) + outside.Sessions.Length);
        Assert.Equal(season.AllSessions, season.Sessions.Concat(outside.Sessions).OrderBy(session => session.Day).ThenBy(session => session.Begins).ThenBy(session => session.Id.Text, StringComparer.Ordinal));
        Assert.Equal(season.Facts.All(SeasonFacets.Note).Count(), season.Notes.Count() + outside.Notes.Length);
        Assert.True(season.Goals.Count() <= 3 && season.Tracks.Count() <= 40);
        Assert.Equal(season.MatchDays.Distinct().Order(), season.MatchDays);
    }
}
