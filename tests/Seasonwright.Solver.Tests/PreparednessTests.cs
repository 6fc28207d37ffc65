using System.Globalization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;
using Seasonwright.Truth.Tests;

namespace Seasonwright.Solver.Tests;

public class PreparednessTests
{
    /// <summary>Source: closed forms of the impulse-response model, time constants 42 and 7 days with weights 1 and 2: the effect turns positive after ln(2) 42 7 / 35 = 5.82 days and is greatest after 20.87 (Fitz-Clarke JR, Morton RH, Banister EW 1991, J Appl Physiol 71(3):1151-1158).</summary>
    [Fact]
    public void A_load_harms_for_five_days_and_helps_most_after_three_weeks()
    {
        Assert.All(Enumerable.Range(1, 5), day => Assert.True(Preparedness.Kernel(day) < 0));
        Assert.All(Enumerable.Range(6, 200), day => Assert.True(Preparedness.Kernel(day) > 0));
        Assert.Equal(21, Enumerable.Range(1, 200).MaxBy(Preparedness.Kernel));
        Assert.Equal(0, Preparedness.Kernel(0));
        Assert.Equal(0, Preparedness.Kernel(-3));
    }

    /// <summary>Source: q / (1 - q) with q = exp(-1 / tau), today left out: 41.501984 for 42 days, 6.511901 for 7.</summary>
    [Fact]
    public void The_steady_state_is_the_geometric_sum()
    {
        Assert.Equal(41.501984 - 2 * 6.511901, Preparedness.SteadyState, 5e-6);
        Assert.Equal(Preparedness.SteadyState, Enumerable.Range(1, 2000).Sum(Preparedness.Kernel), 1e-9);
    }

    /// <summary>Source: 28 days of 100: 2019.4155 for 42 days, today left out; for 7 days 737.4315 with today, times exp(-1 / 7) without.</summary>
    [Fact]
    public void Four_weeks_are_the_partial_sum() =>
        Assert.Equal(2019.4155 - 2 * 737.4315 * Math.Exp(-1.0 / 7), 100 * Enumerable.Range(1, 28).Sum(Preparedness.Kernel), 2e-4);

    [Theory]
    [InlineData("", 7, "20 18 10 20 17 15 0")]
    // MD-4 1.5, MD-3 1.6, MD-2 0.8, MD-1 0.5, the day after a Saturday match 0.35; the days farther away 1.
    [InlineData("5", 7, "17 26 28 14 9 0 6")]
    // A match on the Sunday before: the first day is the day after one.
    [InlineData("-1 6", 7, "7 11 28 30 15 9 0")]
    [InlineData("0 1 2 3 4 5 6", 7, "14 14 14 14 14 14 14")]
    [InlineData("", 3, "0 0 0 0 53 47 0")]
    [InlineData("6", 1, "0 0 0 0 0 0 100")]
    public void Training_falls_on_days_by_their_distance_from_matches(string matches, int days, string shares)
    {
        var found = Preparedness.DayShares([.. matches.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(day => int.Parse(day, CultureInfo.InvariantCulture))], days);
        Assert.Equal(shares, string.Join(' ', found.Select(share => Math.Round(100 * share, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture))));
        Assert.Equal(1, found.Sum(), 1e-12);
    }

    /// <summary>Source: tests/Oracles/preparedness.py, which keeps two running stores day by day. Coefficients are rounded to a millionth of a per mille for each point: a hundred points a week over a year are off by less than a thousandth.</summary>
    [Fact]
    public void Seasons_have_the_preparedness_that_a_script_works_out()
    {
        var rows = Cases.Rows("solver/preparedness.csv");
        Assert.True(rows.Count >= 7);
        foreach (var row in rows)
        {
            var training = Numbers(row["training"]).Select(points => (int)points).ToList();
            var cut = int.Parse(row["cut"], CultureInfo.InvariantCulture);
            var first = Plans.Monday.AddDays(cut);
            var season = Seasons.Made(Numbers(row["matches"]).Select(day => (SeasonEdit)Seasons.Match(Plans.Monday.AddDays((int)day), Importance.Regular, "m")).Prepend(Seasons.Start(first, training.Count)));
            var problem = Problem.Of(season, Plans.Team(), new Wishes { Start = Enum.Parse<StartLevel>(row["start"], ignoreCase: true) });
            var found = Preparedness.Of(problem).Select(match => match.Of(training) / (double)Preparedness.PerMille).ToList();
            var expected = Numbers(row["expected"]).ToList();
            Assert.Equal(expected.Count, found.Count);
            Assert.All(expected.Zip(found), pair => Assert.Equal(pair.First, pair.Second, 1e-3));
        }
    }

    private static IEnumerable<double> Numbers(string cell) => cell.Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture));
}
