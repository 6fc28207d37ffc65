using System.Globalization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>
/// What a coach has accepted again and again, offered as the team's own way: the figures that were passed move out to the
/// largest value that was accepted, or, where no figure was passed, the rule goes off.
/// </summary>
/// <param name="Accepted">How many of its findings the coach lives with now.</param>
/// <param name="Edits">What makes it the team's way.</param>
/// <param name="Silent">How many of those accepted are then within the rule.</param>
/// <param name="Left">What the rule still says then.</param>
public sealed record OurWay(Rule Rule, int Accepted, ValueList<SetRuleParameter> Edits, int Silent, ValueList<Finding> Left)
{
    /// <summary>So many acceptances of one rule in one season are a way, not an exception. A working default, no source.</summary>
    public const int Often = 3;

    // A figure passed behind another shows only once the first has moved: a rise counts as a warning, as a caution and in points.
    private const int MostRounds = 8;

    /// <summary>One offer a rule at most, in the order of running. Nothing is offered for stops, nor for a rule that nobody may switch off.</summary>
    public static ValueList<OurWay> Of(Season season, Setup setup, Checkup checkup) => LivedWith(checkup)
        .Select(lived => Of(season, setup, lived.Key, [.. lived])).OfType<OurWay>().ToValueList();

    /// <summary>The rules whose findings the coach lives with often enough for an offer, with those findings.</summary>
    public static IEnumerable<IGrouping<Rule, Finding>> LivedWith(Checkup checkup) => checkup.Accepted.Select(entry => entry.Finding)
        .Where(finding => finding.Severity < Severity.Stop && !finding.Rule.IsFixed)
        .GroupBy(finding => finding.Rule).Where(lived => lived.Count() >= Often);

    /// <summary>A value moved away from the limit to the next step of its figure: whole per cent, 0.05 of a ratio, else whole numbers.</summary>
    internal static decimal Outward(Figure figure, decimal value, bool isUp)
    {
        var step = StepOf(figure);
        return step * (isUp ? Math.Ceiling(value / step) : Math.Floor(value / step));
    }

    private static OurWay? Of(Season season, Setup setup, Rule rule, List<Finding> lived)
    {
        if (lived.TrueForAll(finding => NumberOf(finding) is null))
            return rule.Settings.Contains(Figure.On) ? Tried(season, setup, rule, lived, [new SetRuleParameter(new(rule.Id, Figure.On.Name), "no")]) : null;
        List<SetRuleParameter> edits = [];
        for (var round = 0; round < MostRounds; round++)
        {
            var moved = Said(season, With(setup, edits), rule).Where(finding => lived.Exists(known => IsSame(known, finding)))
                .GroupBy(NumberOf).Where(passed => passed.Key is not null).Select(passed => Moved(With(setup, edits), rule, passed.Key!, [.. passed])).ToList();
            if (moved.Count == 0 || moved.Contains(null)) break;
            edits = [.. edits.Where(edit => !moved.Exists(other => other!.Parameter == edit.Parameter)), .. moved.OfType<SetRuleParameter>()];
        }
        return edits.Count > 0 ? Tried(season, setup, rule, lived, edits) : null;
    }

    /// <summary>The figure at the outermost of these values, or null where it cannot hold that.</summary>
    private static SetRuleParameter? Moved(Setup setup, Rule rule, Figure figure, List<Finding> passed)
    {
        var isUp = passed[0].Value > passed[0].Limit;
        var value = Outward(figure, isUp ? passed.Max(finding => finding.Value) : passed.Min(finding => finding.Value), isUp);
        var now = new Figures(rule.Id, setup).Number(figure);
        // Some rules speak at the limit itself.
        if (isUp ? value <= now : value >= now) value = now + (isUp ? StepOf(figure) : -StepOf(figure));
        return figure.Canonical(value.ToString(CultureInfo.InvariantCulture)) is { } text ? new SetRuleParameter(new(rule.Id, figure.Name), text) : null;
    }

    private static OurWay? Tried(Season season, Setup setup, Rule rule, List<Finding> lived, List<SetRuleParameter> edits)
    {
        var left = Said(season, With(setup, edits), rule);
        var silent = lived.Count(known => !left.Exists(finding => IsSame(known, finding)));
        return silent > 0 ? new OurWay(rule, lived.Count, edits.ToValueList(), silent, left.ToValueList()) : null;
    }

    private static List<Finding> Said(Season season, Setup setup, Rule rule)
    {
        var checkup = Rulebook.Check(season, setup);
        return [.. checkup.Findings.Concat(checkup.Accepted.Select(entry => entry.Finding)).Where(finding => finding.Rule == rule)];
    }

    /// <summary>Of a run of weeks only some may be left, so it is the same where it lies in the run.</summary>
    private static bool IsSame(Finding known, Finding finding) => known.Code == finding.Code
        && (known.Place.IsWeeks ? finding.Place.IsWeeks && known.Place.Touches(finding.Place) : known.Place.About == finding.Place.About);

    private static Figure? NumberOf(Finding finding) =>
        finding.Rule.Figures.FirstOrDefault(figure => figure.Name == finding.Figure && figure.Kind == FigureKind.Number);

    private static decimal StepOf(Figure figure) => figure.Unit switch
    {
        FigureUnit.Share => 0.01m,
        FigureUnit.Count when figure.Default.Contains('.', StringComparison.Ordinal) => 0.05m,
        _ => 1,
    };

    private static Setup With(Setup setup, IEnumerable<SetRuleParameter> edits) =>
        edits.Aggregate(setup, (sum, edit) => Decider.Decide(sum, edit) is Edits.Accepted accepted ? sum.With(accepted.Step) : sum);
}
