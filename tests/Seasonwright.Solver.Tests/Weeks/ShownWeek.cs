using System.Globalization;
using System.Text;

namespace Seasonwright.Solver.Tests;

/// <summary>A laid-out week in a few lines, to be looked at.</summary>
internal static class ShownWeek
{
    public static string Of(WeekProposal proposal)
    {
        var problem = proposal.Problem;
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{problem.Phase} {problem.Kind}: ours {(problem.Ours is { } aim ? problem.Points(aim) : null)} asked {string.Concat(problem.Asked)} cost {proposal.Cost} bound {proposal.Bound} {proposal.IsProven} monotony {proposal.MonotonyOfDays:0.00} {problem.Days.Count} days");
        foreach (var day in problem.Days)
        {
            var load = proposal.LoadOf(day);
            text.Append(CultureInfo.InvariantCulture, $"  {day.Date:ddd} {day.Around.Label,-5} {(day.IsMatch ? "MATCH" : day.IsClosed ? "closed" : ""),-6} {problem.Points(load.Match),5}+{problem.Points(load.Practice),5}+{problem.Points(load.Ours),5} ");
            foreach (var session in proposal.All.Where(one => one.Day == day.Index).OrderBy(one => one.Slot))
                text.Append(CultureInfo.InvariantCulture, $" | {session.Slot.ToString()[..2]} {session.Kind}{(session.IsAssumed ? "?" : "")} {session.Minutes}'x{session.Rpe} [{string.Join(' ', session.Qualities.Select(quality => quality.ToString()[..3]))}]");
            foreach (var asked in proposal.Asked.Where(one => one.Day == day.Index)) text.Append(CultureInfo.InvariantCulture, $" (asked {asked.Quality})");
            text.AppendLine();
        }
        foreach (var one in proposal.Short) text.AppendLine(CultureInfo.InvariantCulture, $"  - {one.Rule} {one.Sentence}");
        return text.ToString();
    }
}
