using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Setups;

public enum DateOrder
{
    DayMonthYear,
    MonthDayYear,
    YearMonthDay,
}

public enum Paper
{
    A4,
    Letter,
}

/// <summary>How a team writes and reads. Files and the command line stay ISO and invariant whatever stands here.</summary>
/// <param name="Zone">IANA zone of the team's home.</param>
/// <param name="WeekStart">What new seasons start their weeks on.</param>
public sealed record LocaleSettings(
    DateOrder DateOrder = DateOrder.DayMonthYear,
    bool DecimalComma = false,
    DayOfWeek WeekStart = DayOfWeek.Monday,
    Paper Paper = Paper.A4,
    MassUnit MassUnit = MassUnit.Kilogram,
    string Zone = "Etc/UTC");
