using System.Collections.Immutable;
using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Seasons;

/// <summary>What a season keeps although it has no place in its weeks: it returns when the season grows that way, and nothing is dropped.</summary>
/// <param name="Weeks">Weeks off either end that still hold a plan.</param>
/// <param name="Undated">Matches without any day.</param>
public sealed record Outside(
    ImmutableArray<SeasonWeek> Weeks,
    ImmutableArray<Match> Matches,
    ImmutableArray<Match> Undated,
    ImmutableArray<Event> Events,
    ImmutableArray<TestDay> TestDays,
    ImmutableArray<Session> Sessions,
    ImmutableArray<Note> Notes)
{
    public int Count => Weeks.Length + Matches.Length + Undated.Length + Events.Length + TestDays.Length + Sessions.Length + Notes.Length;

    internal static Outside Of(Season season)
    {
        var planned = WeeksWithPlan(season.Facts);
        var weeks = season.Numbered(season.Frame.Before, 1 - season.Frame.Before.Count)
            .Concat(season.Numbered(season.Frame.After, season.Frame.Weeks.Count + 1))
            .Where(week => planned.Contains(week.Id));
        bool IsOut(Calendar.DaySpan days) => season.Days is not { } span || !span.Overlaps(days);
        return new Outside(
            [.. weeks],
            [.. season.AllMatches.Where(match => match.Days is { } days && IsOut(days))],
            [.. season.AllMatches.Where(match => match.Day is null)],
            [.. season.AllEvents.Where(e => IsOut(e.Days))],
            [.. season.AllTestDays.Where(test => season.WeekOf(test.Day) is null)],
            [.. season.AllSessions.Where(session => season.WeekOf(session.Day) is null)],
            [.. season.Facts.All(SeasonFacets.Note).Select(note => note.Value).Where(note => IsOut(note.Days)).OrderBy(note => note.Days)]);
    }

    private static ImmutableHashSet<WeekId> WeeksWithPlan(FactSet facts) =>
        [
            .. facts.All(SeasonFacets.WeekPhase).Select(fact => fact.Subject),
            .. facts.All(SeasonFacets.WeekBlock).Select(fact => fact.Subject),
            .. facts.All(SeasonFacets.WeekKind).Select(fact => fact.Subject),
            .. facts.All(SeasonFacets.WeekLoad).Select(fact => fact.Subject),
            .. facts.All(SeasonFacets.WeekEmphasis).Select(fact => fact.Subject.First),
            .. facts.All(SeasonFacets.WeekPractices).Select(fact => fact.Subject),
            .. facts.All(SeasonFacets.WeekNote).Select(fact => fact.Subject),
            .. facts.All(SeasonFacets.PracticeWish).Select(fact => fact.Subject),
            .. facts.All(SeasonFacets.TrackCell).Where(fact => fact.Subject.Second.Week is not null).Select(fact => fact.Subject.Second.Week!.Value),
        ];
}
