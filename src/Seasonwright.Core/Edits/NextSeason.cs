using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>
/// A new season from the last one: the plan moves by whole weeks until the week of the last season's first competition match
/// is the week of the new one's. Matches, notes, locks and versions stay behind; events come along as provisional, for their
/// dates must be checked; test days and own cells by day come along shifted.
/// </summary>
public static class NextSeason
{
    /// <summary>The first official match with a day, or null when the season has none.</summary>
    public static DateOnly? FirstCompetitionMatch(Season season) => season.Matches.Where(match => match.IsOfficial && match.IsOnOneDay).Select(match => match.Day).FirstOrDefault();

    /// <param name="firstCompetitionMatch">The day of the new season's first official match.</param>
    /// <param name="title">What the new season is called, or null.</param>
    /// <param name="facts">The new season's facts, for <see cref="AdoptSeason"/>; weeks keep their ids.</param>
    /// <returns>False when the last season has no official match to align on, or the day is no possible one (see <see cref="Frame.PossibleDays"/>).</returns>
    public static bool TryFrom(Season last, DateOnly firstCompetitionMatch, string? title, out FactSet facts)
    {
        facts = FactSet.Empty;
        if (FirstCompetitionMatch(last) is not { } aligned || !Frame.PossibleDays.Contains(firstCompetitionMatch)) return false;
        var start = last.Frame.WeekStart;
        var shift = WeekGrid.StartOfWeek(firstCompetitionMatch, start).DayNumber - WeekGrid.StartOfWeek(aligned, start).DayNumber;
        facts = last.Facts.Keys.Where(key => !LeftBehind.Contains(key.Facet)).Aggregate(facts, (sum, key) => sum.With(key, last.Facts[key]));
        facts = facts
            .With(SeasonFacets.Frame.Of(default), last.Frame with { FirstDay = last.Frame.FirstDay.AddDays(shift) })
            .With(SeasonFacets.Team.Of(default), last.Team with { Title = title });
        foreach (var (id, item) in last.Facts.All(SeasonFacets.Event))
            facts = facts.With(SeasonFacets.Event.Of(id), Shifted(item, shift));
        foreach (var (id, test) in last.Facts.All(SeasonFacets.TestDay))
            facts = facts.With(SeasonFacets.TestDay.Of(id), test with { Day = test.Day.AddDays(shift) });
        foreach (var (id, goal) in last.Facts.All(SeasonFacets.Goal))
            facts = facts.With(SeasonFacets.Goal.Of(id), goal with { By = goal.By?.AddDays(shift) });
        // All day cells go before any comes back, for a shifted day may be another cell's old one.
        var dayCells = last.Facts.All(SeasonFacets.TrackCell).Where(cell => cell.Subject.Second.Day is not null).ToList();
        facts = dayCells.Aggregate(facts, (sum, cell) => sum.With(SeasonFacets.TrackCell.Of(cell.Subject), null));
        foreach (var (subject, value) in dayCells)
            facts = facts.With(SeasonFacets.TrackCell.Of(new(subject.First, CellPlace.Of(subject.Second.Day!.Value.AddDays(shift)))), value);
        return true;
    }

    private static readonly HashSet<string> LeftBehind = new(StringComparer.Ordinal)
    {
        SeasonFacets.Match.Name, SeasonFacets.Note.Name, SeasonFacets.WeekNote.Name, SeasonFacets.WeekLock.Name,
        SeasonFacets.WeekReady.Name, SeasonFacets.Publication.Name,
    };

    private static Event Shifted(Event item, int days) => item with
    {
        Days = item.Days.Shift(days),
        Provisional = true,
        Legs = item.Legs?.Select(leg => leg with { Day = leg.Day.AddDays(days), ArrivalDay = leg.ArrivalDay?.AddDays(days) }).ToValueList(),
    };
}
