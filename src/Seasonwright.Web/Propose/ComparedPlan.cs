using System.Globalization;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Web.Propose;

/// <summary>A plan in a few figures, so that plans can be laid side by side.</summary>
/// <param name="Name">"Your plan", "Plan 1".</param>
/// <param name="Proposal">Null for the plan that stands.</param>
/// <param name="Worst">Lowest modelled preparedness on the matches that count, per mille; null without loads.</param>
/// <param name="Kinds">Phase and kind of every week.</param>
internal sealed record ComparedPlan(
    string Name, Proposal? Proposal, Season Season, int? Worst, int? Mean, int? Hardest, int? InCompetition, int Unloading, int Tests, IReadOnlyList<Finding> Findings, IReadOnlyList<(PhaseKind? Phase, WeekKind? Kind)> Kinds)
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
        return new(
            name, proposal, season, prepared.Count > 0 ? prepared.Min() : null, prepared.Count > 0 ? (int)prepared.Average() : null,
            points.Max(), competition.Count > 0 ? (int)Math.Round(competition.Average()) : null,
            season.Weeks.Count(week => season.KindOf(week.Id) == WeekKind.Unloading), season.TestDays.Count(),
            Rulebook.Check(season, setup).Findings,
            [.. season.Weeks.Select(week => (season.PhaseOf(week)?.Phase.Kind, season.KindOf(week.Id)))]);
    }

    /// <summary>Findings that are not forced.</summary>
    public int Open => Findings.Count(finding => !finding.IsForced);

    public int Forced => Findings.Count - Open;

    /// <summary>How it stands against another, in one sentence: better, as good and worse on what; and whether it is better on anything.</summary>
    public (string Words, bool IsBetter) Against(ComparedPlan stands)
    {
        var its = stands.Proposal is null ? Words.Say("against.yours") : stands.Name;
        (string Name, int? Here, int? There, Func<int?, string> Words, bool IsMoreBetter)[] figures =
        [
            ("against.worst", Worst, stands.Worst, PerCent, true),
            ("against.mean", Mean, stands.Mean, PerCent, true),
            ("against.findings", Open, stands.Open, number => number!.Value.ToString(CultureInfo.InvariantCulture), false),
        ];
        var judged = figures.Where(figure => figure.Here is not null && figure.There is not null)
            .ToLookup(figure => figure.IsMoreBetter ? figure.Here!.Value.CompareTo(figure.There!.Value) : figure.There!.Value.CompareTo(figure.Here!.Value),
                figure => Words.Say(figure.Here == figure.There ? "against.same" : "against.other", Words.Say(figure.Name), figure.Words(figure.Here), figure.Words(figure.There), its));
        var parts = new[] { (1, "against.better"), (0, "against.alike"), (-1, "against.worse") }.Where(part => judged.Contains(part.Item1)).Select(part => Words.Say(part.Item2, string.Join(", ", judged[part.Item1])));
        // Beside a plan with weeks that are still empty, another is no worse for having something in them.
        var isBetter = judged.Contains(1) || stands.Worst is null;
        return (Words.Say(isBetter ? "against" : "against.nowhere", Name, string.Join("; ", parts), its), isBetter);
    }

    public static string PerCent(int? perMille) => perMille is { } known ? string.Create(CultureInfo.InvariantCulture, $"{known / 10.0:0.0}\u00a0%") : "–";

    /// <summary>Weeks of another phase or kind than another plan's.</summary>
    public int Unlike(ComparedPlan other) => Kinds.Zip(other.Kinds).Count(pair => pair.First != pair.Second);
}
