using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>Which days of a season are free for one athlete: of sessions, matches, tests and long travel. A day of a week that is not laid out is not known.</summary>
internal sealed class FreeDays
{
    private readonly Plan plan;
    private readonly AthleteDays athlete;
    private readonly DaySpan season;
    private readonly bool[] isKnown, isTaken, isTest, isBusy;

    /// <param name="longTravel">A leg of more hours takes its days.</param>
    public FreeDays(Plan plan, AthleteDays athlete, decimal longTravel)
    {
        (this.plan, this.athlete, season) = (plan, athlete, plan.Season.Days!.Value);
        (isKnown, isTaken, isTest, isBusy) = (new bool[season.Length], new bool[season.Length], new bool[season.Length], new bool[season.Length]);
        foreach (var day in plan.Weeks.Where(week => week.IsLaidOut).SelectMany(week => week.Days.Days())) isKnown[At(day)] = true;
        foreach (var match in plan.Matches) isTaken[At(match.Day!.Value)] = true;
        foreach (var test in plan.Season.TestDays) isTest[At(test.Day)] = true;
        foreach (var leg in plan.Events.Where(item => item.For is null).SelectMany(item => item.Legs ?? []).Where(leg => leg.Hours > longTravel))
            foreach (var day in new DaySpan(leg.Day, leg.ArrivalDay ?? leg.Day).Days().Where(season.Contains)) isTaken[At(day)] = true;
        foreach (var session in athlete.Sessions) isBusy[At(session.Day)] = true;
    }

    public bool IsFree(DateOnly day) => IsFree(At(day));

    /// <summary>Free days from one to another, both inside; null where a day is not known.</summary>
    public int? Count(DateOnly first, DateOnly last)
    {
        if (first < season.First || last > season.Last) return null;
        var count = 0;
        for (var at = At(first); at <= At(last); at++)
        {
            if (!isKnown[at]) return null;
            if (IsFree(at)) count++;
        }
        return count;
    }

    /// <summary>Days free of matches and travel, whatever is trained.</summary>
    public int CountWithoutSessions(DateOnly first, DateOnly last) => new DaySpan(first, last).Days().Count(day => !isTaken[At(day)]);

    /// <summary>What frees a day: of those that hold nothing but sessions of ours that may go elsewhere, the one that helps most runs of as many days, and of two the one with the least load.</summary>
    public ValueList<SeasonEdit> Emptied(DateOnly first, DateOnly last, decimal least) =>
        new DaySpan(first, last).Days().Where(day => !isTaken[At(day)] && !isTest[At(day)] && athlete.On(day) is { Count: > 0 } all && all.All(session => session.IsOurs && !session.IsLocked))
            .OrderByDescending(day => Enumerable.Range(0, last.DayNumber - first.DayNumber + 1).Count(ahead => Count(day.AddDays(ahead + first.DayNumber - last.DayNumber), day.AddDays(ahead)) < least))
            .ThenBy(day => athlete.LoadOn(day)).Take(1).SelectMany(athlete.On).SelectMany(session => BetterSession.Away(plan, session)).ToValueList();

    private bool IsFree(int at) => !isTaken[at] && !isTest[at] && !isBusy[at];

    private int At(DateOnly day) => day.DayNumber - season.First.DayNumber;
}
