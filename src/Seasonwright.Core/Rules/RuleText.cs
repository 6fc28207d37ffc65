using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>The rulebook's terms and figures in people's words.</summary>
public static class RuleText
{
    public static string Of(Severity severity) => RuleWords.Say($"severity.{severity}");

    public static string Of(Evidence evidence) => RuleWords.Say($"evidence.{evidence}");

    public static string Of(SourceStatus status) => RuleWords.Say($"status.{status}");

    public static string Of(RuleScope scope) => RuleWords.Say($"scope.{scope}");

    /// <summary>"%", "days"; "" for a bare number.</summary>
    public static string Of(FigureUnit unit) => RuleWords.Say($"unit.{unit}", "").Trim();

    /// <summary>"sessions, squad"; null for nothing.</summary>
    public static string? Of(Needs needs) => needs == Needs.None ? null
        : string.Join(", ", Enum.GetValues<Needs>().Where(one => one != Needs.None && needs.HasFlag(one)).Select(one => RuleWords.Say($"needs.{one}")));

    /// <summary>How a rule stands to a plan, with what it could look at.</summary>
    public static string Of(RuleAnswer answer) => answer.Told == 0 ? Judged(answer) : RuleWords.Say("state.Told", Judged(answer), answer.Told);

    private static string Judged(RuleAnswer answer) => answer.State switch
    {
        RuleState.Waits when answer.Rule.IsOfPlayers => RuleWords.Say("state.OfPlayers"),
        RuleState.Waits => RuleWords.Say("state.Waits", Of(answer.Rule.Needs)),
        RuleState.Checked when answer.Judged == 1 => RuleWords.Say(answer.Against > 0 ? "state.AgainstOne" : "state.CheckedOne"),
        RuleState.Checked when answer.Against > 0 => RuleWords.Say("state.Against", answer.Judged, answer.Against),
        var state => RuleWords.Say($"state.{state}", answer.Judged),
    };

    /// <summary>The most serious it is called while the team changes nothing.</summary>
    public static Severity HighestByDefault(Rule rule) => rule.Evidence == Evidence.Contested ? Severity.Caution : rule.Highest;

    /// <summary>A value of a figure with its unit: "15 %", "14 days", "off".</summary>
    public static string Of(Rule rule, Figure figure, string value) => figure.Kind switch
    {
        _ when value.Length == 0 => RuleWords.Say("value.none"),
        FigureKind.YesNo => RuleWords.Say($"value.{value}"),
        FigureKind.Choice => rule.ChoiceWord(value),
        FigureKind.Number when value == "1" && RuleWords.Find($"unit.{figure.Unit}.one") is { } one => one,
        FigureKind.Number or FigureKind.Numbers => RuleWords.Say($"unit.{figure.Unit}", string.Join(", ", value.Split(' ').Select(part => Number(figure.Unit, part)))),
        FigureKind.Words => value.Replace('_', ' '),
        _ => value,
    };

    /// <summary>What a figure takes, in words: "a number from 0 to 10".</summary>
    public static string Taken(Figure figure) => figure.Kind switch
    {
        FigureKind.Choice => RuleWords.Say("takes.Choice", string.Join(", ", figure.Choices)),
        FigureKind.Numbers => RuleWords.Say("takes.Numbers", figure.Default.Split(' ').Length, figure.Least, figure.Most),
        FigureKind.Number => RuleWords.Say(figure.Unit == FigureUnit.Share ? "takes.Share" : "takes.Number", figure.Least, figure.Most),
        var kind => RuleWords.Say($"takes.{kind}"),
    };

    private static string Number(FigureUnit unit, string text) => unit == FigureUnit.Share
        ? (100 * decimal.Parse(text, CultureInfo.InvariantCulture)).ToString("0.##", CultureInfo.InvariantCulture)
        : text;
}
