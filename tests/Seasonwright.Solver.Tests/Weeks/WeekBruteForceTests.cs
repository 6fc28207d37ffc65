using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver.Tests;

/// <summary>The model against every layout of small weeks: three open days, two or three kinds, lengths of whole steps of 10 or 15 minutes.</summary>
public class WeekBruteForceTests(ITestOutputHelper output)
{
    private static readonly SessionKind[] Kinds = [SessionKind.LowerStrength, SessionKind.SmallDose, SessionKind.UpperStrength, SessionKind.Power, SessionKind.Speed, SessionKind.Intervals, SessionKind.Endurance];

    private static WeekProblem Small(int seed)
    {
        var random = new Random(seed);
        var first = new DateOnly(2027, 9, 13);
        List<DateOnly> matches = [.. Enumerable.Range(-4, 16).Where(_ => random.Next(8) == 0).Select(first.AddDays)];
        var isMatch = Enumerable.Range(0, 7).Select(day => matches.Contains(first.AddDays(day))).ToList();
        List<int> others = [.. Enumerable.Range(0, 7).Where(day => !isMatch[day])];
        HashSet<int> open = [.. random.GetItems(others.ToArray(), 3)];
        var days = Enumerable.Range(0, 7).Select(day => new WeekDay(day, first.AddDays(day), MatchDay.Of(first.AddDays(day), matches), isMatch[day] ? 825 : 0, isMatch[day] || open.Contains(day) ? 100 : 0)).ToValueList();
        var practices = open.Where(_ => random.Next(2) == 0).Take(2).Select(day => new WeekSession(day, DaySlot.Evening, SessionKind.Practice, random.Next(4, 10) * 10, random.Next(4, 8), [])).ToValueList();
        var phase = random.Next(2) == 0 ? PhaseKind.Competition : PhaseKind.SpecificPreparation;
        var kinds = random.GetItems(Kinds, random.Next(2, 4)).Distinct().ToValueList();
        var asked = Enumerable.Range(0, 8).Select(quality => random.Next(5) < 2 ? random.Next(1, 3) : 0).ToValueList();
        return new WeekProblem(days, practices, [], [], matches.Select(day => day.DayNumber - first.DayNumber).Where(day => day is < 0 and > -4 or > 6 and < 10).ToValueList(), random.Next(10, 120) * 10, asked, kinds,
            WeekKind.Building, phase, random.GetItems([3200, 3195, 2500], 1)[0], random.Next(3) == 0 ? 60 * random.Next(2, 5) : null, random.Next(4) == 0 ? random.Next(1, 4) : null, random.Next(5) == 0 ? random.Next(3, 7) : null, new WeekLimits())
        { Step = random.Next(2) == 0 ? 10 : 15 };
    }

    [Fact]
    public void The_model_finds_the_best_layout_of_small_weeks()
    {
        long tried = 0;
        for (var seed = 1; seed <= Seasons.Given("SMALL", 25); seed++)
        {
            var week = Small(seed);
            var search = new WeekBruteForce(week);
            var least = search.Least();
            var found = WeekProposals.Of(week);
            Assert.True(found.IsProven, $"seed {seed}");
            Assert.True(found.Cost == least, $"seed {seed}: {found.Cost} found, {least} is the least\n{string.Join(' ', week.Kinds)} step {week.Step}\n{ShownWeek.Of(found)}");
            Assert.Empty(WeekJudge.Of(week, found.Sessions));
            tried += search.Tried;
        }
        output.WriteLine($"{tried} layouts");
        Assert.True(tried > 20_000, $"{tried} layouts");
    }
}
