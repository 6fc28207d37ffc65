using Seasonwright.Core;
using Seasonwright.Solver;

namespace Seasonwright.Cli;

/// <summary>A proposal as <c>propose</c> tells it to scripts. Scores are points of value; they and their bounds are of the stage they name.</summary>
/// <param name="Score">Of the loads, with <paramref name="Bound"/> and <paramref name="Gap"/>: no loads of this structure are worth more.</param>
/// <param name="Status">"proposed", or "clash" where no plan keeps all that is asked.</param>
/// <param name="Clash">What cannot hold together, in sentences.</param>
internal sealed record ProposeReport(
    decimal Score, decimal Bound, double Gap, string Status, double Seconds, IReadOnlyList<ProposeReport.Stage> Stages, IReadOnlyList<ProposeReport.WeekReasons> Weeks, IReadOnlyList<string> Clash)
{
    public static ProposeReport Of(Proposal proposal, double seconds)
    {
        Stage[] stages =
        [
            Stage.Of("structure", proposal.Structure.Value, proposal.Structure.Value),
            Stage.Of("loads", proposal.Loads.Value, proposal.Loads.Bound),
            Stage.Of("emphasis", proposal.Emphasis.Value, proposal.Emphasis.Bound),
        ];
        return new(stages[1].Score, stages[1].Bound, stages[1].Gap, proposal.Clash is null ? "proposed" : "clash", Math.Round(seconds, 3), stages,
            [.. proposal.Reasons.Select((reasons, week) => new WeekReasons(week + 1, [.. reasons.Select(reason => new Reason(reason.Sentence, reason.Rule.Length > 0 ? reason.Rule : null))]))], proposal.ClashInWords);
    }

    /// <param name="Gap">How far from the best the stage may be, as a share of the bound.</param>
    internal sealed record Stage(string Name, decimal Score, decimal Bound, double Gap)
    {
        public static Stage Of(string name, long value, long bound) => new(name, value / 1000m, bound / 1000m, bound <= value ? 0 : Math.Round((double)(bound - value) / Math.Max(1, Math.Abs(bound)), 6));
    }

    internal sealed record WeekReasons(int Week, IReadOnlyList<Reason> Reasons);

    internal sealed record Reason(string Sentence, string? Rule);
}
