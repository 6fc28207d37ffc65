using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Cli;

/// <summary>A rule as <c>rules</c> gives it.</summary>
/// <param name="Severity">The most serious it is called by default.</param>
/// <param name="Needs">What it, or a part of it, waits for; null for nothing.</param>
/// <param name="Figures">Its settings and their defaults.</param>
internal sealed record RuleLine(
    string Id, string Name, RuleScope Scope, bool Live, Severity Severity, Evidence Evidence, SourceStatus Status, string? Needs, string What, string Remedy,
    string Caveat, string? Contested, IReadOnlyList<RuleFigure> Figures, IReadOnlyList<RuleSource> Sources)
{
    public static Table<RuleLine> Table { get; } = new(
    [
        new("id", line => line.Id),
        new("name", line => line.Name),
        new("severity", line => CellText.Word<Severity?>(line.Severity)),
        new("evidence", line => RuleText.Of(line.Evidence)),
        new("needs", line => line.Live ? null : line.Needs),
        new("what", line => line.What),
    ]);

    public static RuleLine Of(Rule rule) => new(
        rule.Id, rule.Name, rule.Scope, rule.IsLive || rule.IsOfPlayers, RuleText.HighestByDefault(rule), rule.Evidence, rule.Status, RuleText.Of(rule.Needs), rule.What, rule.UsualRemedy,
        rule.Caveat, rule.Contested,
        [.. rule.Settings.Select(figure => new RuleFigure(figure.Name, rule.LabelOf(figure), figure.Default, figure.Kind is FigureKind.Number or FigureKind.Numbers ? figure.Unit : null))],
        [.. rule.Sources.Select(source => new RuleSource(source.Citation, source.Address, source.IsPartOnly))]);
}

/// <summary>A setting of a rule.</summary>
internal sealed record RuleFigure(string Name, string Label, string Default, FigureUnit? Unit);

/// <summary>A publication behind a rule.</summary>
internal sealed record RuleSource(string Citation, string Address, bool PartOnly);
