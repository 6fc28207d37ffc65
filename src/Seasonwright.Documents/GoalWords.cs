using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.HandOut;

namespace Seasonwright.Documents;

/// <summary>How a goal is told: "Countermovement jump 31 → 34 by Fri 1 Oct 2027".</summary>
public static class GoalWords
{
    public static string Of(Goal goal, LocaleSettings locale)
    {
        string Number(decimal? value) => value?.ToString(CultureInfo.InvariantCulture).Replace(".", locale.DecimalComma ? "," : ".", StringComparison.Ordinal) ?? "?";
        var course = goal.From is null && goal.To is null ? "" : goal.From is null ? $" {Number(goal.To)}" : $" {Number(goal.From)} → {Number(goal.To)}";
        return goal.Measure + course + (goal.By is { } by ? " " + HandOutTexts.Say("goal.by", by.Long(locale)) : "");
    }
}
