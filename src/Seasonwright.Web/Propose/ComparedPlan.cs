using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Web.Propose;

/// <summary>A plan in a few figures, so that plans can be laid side by side.</summary>
/// <param name="Name">"Your plan", "Plan 1".</param>
/// <param name="Proposal">Null for the plan that stands.</param>
/// <param name="Worst">Lowest modelled preparedness on the matches that count, per mille; null without loads.</param>
/// <param name="Findings">That are not forced.</param>
/// <param name="Kinds">Phase and kind of every week.</param>
internal sealed record ComparedPlan(
    string Name, Proposal? Proposal, Season Season, int? Worst, int? Mean, int? Hardest, int? InCompetition, int Unloading, int Tests, int Findings, int Forced, IReadOnlyList<(PhaseKind? Phase, WeekKind? Kind)> Kinds)
{
    public static ComparedPlan Of(string name, Proposal? proposal, Season season, Setup setup, Problem problem)
    {
        var points = season.Weeks.Select(week => season.TargetOf(week.Id) is { } load ? problem.Points.Of(load) : (int?)null).ToList();
        var counted = Preparedness.Of(problem);
        if (counted.Any(match => match.Match.IsKey)) counted = [.. counted.Where(match => match.Match.IsKey)];
        var isWhole = points.TrueForAll(load => load is not null) && counted.Count > 0;
        var training = isWhole ? points.Select((load, week) => load!.Value - problem.Weeks[week].MatchPoints).ToList() : [];
        var prepared = isWhole ? counted.Select(match => (int)(match.Of(training) / Preparedness.PerMille)).ToList() : [];
        var competition = season.Weeks.Where(week => season.PhaseOf(week)?.Phase.Kind is PhaseKind.Competition or PhaseKind.Peak).Select(week => points[week.Number - 1]).OfType<int>().ToList();
        var findings = Rulebook.Check(season, setup).Findings;
        return new(
            name, proposal, season, prepared.Count > 0 ? prepared.Min() : null, prepared.Count > 0 ? (int)prepared.Average() : null,
            points.Max(), competition.Count > 0 ? (int)Math.Round(competition.Average()) : null,
            season.Weeks.Count(week => season.KindOf(week.Id) == WeekKind.Unloading), season.TestDays.Count(),
            findings.Count(finding => !finding.IsForced), findings.Count(finding => finding.IsForced),
            [.. season.Weeks.Select(week => (season.PhaseOf(week)?.Phase.Kind, season.KindOf(week.Id)))]);
    }

    /// <summary>Weeks of another phase or kind than another plan's.</summary>
    public int Unlike(ComparedPlan other) => Kinds.Zip(other.Kinds).Count(pair => pair.First != pair.Second);
}
