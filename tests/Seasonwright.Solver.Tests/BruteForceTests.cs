using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>Source: all plans of a short season, valued one by one. The search must find the best of them.</summary>
public class BruteForceTests(ITestOutputHelper output)
{
    private static readonly DateOnly Monday = new(2027, 7, 5);

    /// <summary>Weeks as letters: "-" nothing, R a regular match on Saturday, K a key one, k a key one on Tuesday, 2 two matches, 3 three, t three of which the last is key, F a friendly, X holidays, x exams, y exams with two matches.</summary>
    /// <param name="cut">Days that the first week lacks.</param>
    public static Season Of(string weeks, int cut = 0)
    {
        List<SeasonEdit> edits = [Seasons.Start(Monday.AddDays(cut), weeks.Length)];
        for (var week = 0; week < weeks.Length; week++)
        {
            var first = Monday.AddDays(7 * week);
            var days = new DaySpan(first, first.AddDays(6));
            edits.AddRange(weeks[week] switch
            {
                'R' => [Seasons.Match(first.AddDays(5), Importance.Regular, "m")],
                'K' => [Seasons.Match(first.AddDays(5), Importance.Key, "m")],
                'k' => [Seasons.Match(first.AddDays(1), Importance.Key, "m")],
                'F' => [Seasons.Match(first.AddDays(5), Importance.Friendly, "m")],
                '2' => [Seasons.Match(first.AddDays(2), Importance.Regular, "m"), Seasons.Match(first.AddDays(6), Importance.Regular, "m")],
                't' => [Seasons.Match(first, Importance.Regular, "m"), Seasons.Match(first.AddDays(2), Importance.Regular, "m"), Seasons.Match(first.AddDays(4), Importance.Key, "m")],
                '3' => [Seasons.Match(first, Importance.Regular, "m"), Seasons.Match(first.AddDays(2), Importance.Regular, "m"), Seasons.Match(first.AddDays(5), Importance.Regular, "m")],
                'X' => [Seasons.Event(EventKind.Holiday, days, 0)],
                'y' => [Seasons.Match(first.AddDays(2), Importance.Regular, "m"), Seasons.Match(first.AddDays(6), Importance.Regular, "m"), Seasons.Event(EventKind.Exams, days, 60)],
                'x' => [Seasons.Event(EventKind.Exams, days, 60)],
                _ => (SeasonEdit[])[],
            });
        }
        return Seasons.Made(edits);
    }

    /// <param name="fixed">Loads that are fixed, "week=points"; they also keep the number of plans down.</param>
    [Theory]
    // A key match and an event.
    [InlineData("---xRRRK", StartLevel.Home, "1=48 2=63")]
    [InlineData("--F-RxRK", StartLevel.Off, "1=42 2=60")]
    [InlineData("--RXRR2K", StartLevel.Home, "1=45")]
    // A long break, a key match early in its week, a taper of two weeks.
    [InlineData("-RRXXRRk", StartLevel.Kept, "")]
    [InlineData("--R22-k-", StartLevel.Home, "1=48")]
    [InlineData("---R--K-", StartLevel.Kept, "1=60")]
    // From the first week on; a whole week off before anything; exams with two matches; three matches.
    [InlineData("RR2R3RK-", StartLevel.Home, "")]
    [InlineData("X--RRXRK", StartLevel.Off, "2=48")]
    [InlineData("x--FR2K-", StartLevel.Off, "2=60")]
    [InlineData("-RyR22RK", StartLevel.Kept, "")]
    // A tournament whose last match is the key one.
    [InlineData("-----t--", StartLevel.Kept, "1=60 2=66 3=72")]
    // A load off the grid, and one that shapes what is before and after it.
    [InlineData("---RRR-K", StartLevel.Home, "1=47 5=66")]
    // Preparation alone.
    [InlineData("------FK", StartLevel.Kept, "1=60 2=66 3=75")]
    // A first week of four days, after training was kept up and after a home programme.
    [InlineData("---R2--K", StartLevel.Kept, "2=63", 3)]
    [InlineData("--RRx-RK", StartLevel.Home, "2=63", 3)]
    public void The_best_of_all_plans_is_found(string weeks, StartLevel start, string @fixed, int cut = 0)
    {
        var points = Problem.Of(Of(weeks, cut), Seasons.Team, new Wishes()).Points;
        var wishes = @fixed.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(load => load.Split('=')).Select(load => new WeekWish(new($"w{load[0]}"), Load: points.ToLoad(int.Parse(load[1], CultureInfo.InvariantCulture))));
        var problem = Problem.Of(Of(weeks, cut), Seasons.Team, new Wishes { Start = start, Weeks = wishes.ToValueList() });
        var all = new BruteForce(problem);
        var best = all.Best();
        var found = Structures.Best(problem);
        output.WriteLine($"{weeks}: {all.Valued} weeks valued, best {best}, found {found?.Value}");
        if (all.BestPlan is { } plan) output.WriteLine(string.Join("  ", plan.Select(week => $"{week.Phase} {week.Kind} {week.Points}")));
        if (found is not null) output.WriteLine(Shown.Of(problem, found));
        Assert.NotNull(best);
        Assert.Equal(best, found?.Value);
    }
}
