using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver.Tests;

/// <summary>Weeks drawn from a seed, with a week before and one after: matches, practices on days, counted or unknown, tests, events, locks, sessions that stand.</summary>
internal static class WeekSeasons
{
    private static readonly DateOnly Monday = new(2027, 9, 6);

    private static readonly QualityId[] Qualities = [.. Quality.Defaults.Select(quality => quality.Id)];

    /// <returns>The season, its second week (or first, where it is short), and the day from which is planned.</returns>
    public static (Season Season, SeasonWeek Week, DateOnly From) Drawn(int seed)
    {
        var random = new Random(seed);
        var isShort = random.Next(12) == 0;
        List<SeasonEdit> edits = [Seasons.Start(isShort ? Monday.AddDays(7 + random.Next(1, 7)) : Monday, isShort ? 2 : 3)];
        var at = isShort ? 1 : 2;
        var first = Monday.AddDays(7);
        WeekId id = new($"w{at}"), all = new(isShort ? "w2" : "w3");
        edits.Add(new PaintPhase(new("w1"), all, new("p"), random.GetItems([PhaseKind.GeneralPreparation, PhaseKind.SpecificPreparation, PhaseKind.PreCompetition, PhaseKind.Competition, PhaseKind.Competition, PhaseKind.Competition, PhaseKind.Transition], 1)[0], new("r")));
        if (random.Next(3) > 0) edits.Add(new SetWeekKind(id, id, random.GetItems(Enum.GetValues<WeekKind>().Where(kind => kind != WeekKind.Break).ToArray(), 1)[0]));
        if (random.Next(6) > 0) edits.Add(new SetWeekLoad(id, id, new Load(random.Next(600, 3800))));
        if (random.Next(6) > 0) edits.AddRange(Qualities.Where(_ => random.Next(3) > 0).Select(quality => new SetEmphasis(id, id, quality, (Emphasis)random.Next(1, 4))));
        foreach (var day in Enumerable.Range(-5, 19).Where(_ => random.Next(7) == 0)) edits.Add(Seasons.Match(first.AddDays(day), random.Next(4) == 0 ? Importance.Friendly : Importance.Regular, "m"));
        var known = random.Next(3);
        if (known == 0) edits.AddRange(Enumerable.Range(-3, 13).Where(_ => random.Next(5) < 2).Select(day => Session($"p{day + 5}", first.AddDays(day), random, SessionKind.Practice)));
        if (known == 1) edits.Add(new SetPractices(id, id, new Practices(random.Next(0, 7), random.Next(2) == 0 ? new Minutes(10 * random.Next(3, 13)) : null, random.Next(2) == 0 ? new Rpe(random.Next(6, 16) / 2m) : null)));
        var ours = Enum.GetValues<SessionKind>().Where(kind => kind != SessionKind.Practice).ToArray();
        if (random.Next(2) == 0) edits.AddRange(Enumerable.Range(-3, 13).Where(_ => random.Next(5) == 0).Select(day => Session($"o{day + 5}", first.AddDays(day), random, random.GetItems(ours, 1)[0])));
        if (random.Next(5) == 0) edits.Add(new SetTestDay(new TestDay(new("t"), first.AddDays(random.Next(7)), random.GetItems(["Strength, jumps, sprint", "Yo-yo run", "CMJ"], 1)[0], random.Next(2) == 0 ? "am" : null)));
        if (random.Next(4) == 0) edits.Add(Seasons.Event(EventKind.Other, new DaySpan(first.AddDays(random.Next(4)), first.AddDays(random.Next(4, 7))), random.GetItems([0, 0, 40, 60, 90, 130], 1)[0]));
        if (random.Next(6) == 0) edits.Add(Travel(first.AddDays(random.Next(7)), random));
        if (random.Next(4) == 0) edits.Add(new SetBrief(Brief.Default with { Time = new([.. Enum.GetValues<PhaseKind>().Select(phase => new PhaseTime(phase, random.Next(2) == 0 ? random.Next(2, 8) : null, random.Next(2) == 0 ? random.Next(2, 12) : null))]) }));
        // A day can hold no more than three: what is refused is left out.
        var season = edits.Aggregate(Season.Empty(new("s")), (now, edit) => Decider.Decide(now, edit) is Accepted accepted ? now.With(accepted.Step) : now);
        var week = season.Week(id)!;
        return (season, week, random.Next(3) == 0 ? week.Days.First.AddDays(random.Next(week.Days.Length)) : week.Days.First);
    }

    private static SetSession Session(string id, DateOnly day, Random random, SessionKind kind) => new(new Session(new(id), day, (DaySlot)random.Next(3), kind, new Minutes(5 * random.Next(4, 22)), new Rpe(random.Next(4, 17) / 2m),
        IsLocked: random.Next(3) == 0, IsCancelled: random.Next(8) == 0));

    private static SetEvent Travel(DateOnly day, Random random) => new(new Event(new("travel"), EventKind.Travel, "Away", DaySpan.Of(day), Legs: new([new Leg(day, Departs: random.Next(2) == 0 ? null : new TimeOnly(8, 0), Arrives: new TimeOnly(random.Next(9, 20), 0))])));
}
