using System.Globalization;
using System.Text;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>A structure as lines of text, one a week: number, phase, kind, load as matches, practice and ours, matches.</summary>
internal static class Shown
{
    private static readonly string[] Phases = ["GP", "SP", "PC", "C ", "PK", "T "];

    public static string Of(Problem problem, Structure structure)
    {
        var text = new StringBuilder();
        foreach (var week in structure.Weeks)
        {
            var facts = problem.Weeks[week.Index];
            var training = week.Points - facts.MatchPoints;
            var practice = KindTable.Practice(problem, facts, week.Kind, week.Variant, training);
            var matches = string.Concat(facts.Matches.Select(match => match.Kind.ToString()[0]));
            text.AppendLine(string.Create(CultureInfo.InvariantCulture, $"{facts.Number,2} {Phases[(int)week.Phase]} {week.Kind.ToString().ToLowerInvariant(),-12} b{week.Block,-2} {week.Points,3}={facts.MatchPoints,2}+{practice,2}+{training - practice,2} {matches,-3} {(facts.Availability < 100 ? facts.Availability + "%" : ""),-4} g{week.Guide / 10,3} {string.Join(' ', week.Bounds.Where(bound => bound.Binds(week.Points)).Select(bound => bound.Condition.Name))}"));
        }
        foreach (var breach in structure.Broken) text.AppendLine(string.Create(CultureInfo.InvariantCulture, $"   broken in week {breach.Week + 1}: {breach.Condition.Name} by {breach.Beyond / 10.0}"));
        return text.ToString();
    }
}
