using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;

namespace Seasonwright.Web.Year;

/// <summary>How a goal is told: "Countermovement jump 31 → 34 by Fri 1 Oct 2027".</summary>
internal static class GoalWords
{
    public static string Of(Goal goal, LocaleSettings locale)
    {
        string Number(decimal? value) => value?.ToString(CultureInfo.InvariantCulture).Replace(".", locale.DecimalComma ? "," : ".", StringComparison.Ordinal) ?? "?";
        var course = goal.From is null && goal.To is null ? "" : goal.From is null ? $" {Number(goal.To)}" : $" {Number(goal.From)} → {Number(goal.To)}";
        return goal.Measure + course + (goal.By is { } by ? " " + Words.Say("goal.by", by.Long(locale)) : "");
    }
}
