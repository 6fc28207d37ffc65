using System.CommandLine;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Cli;

/// <summary>Works on one week of a season file, day by day.</summary>
internal static class WeekCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock) => new("week", Texts.Say("help.week")) { WeekShowCommand.Make(terminal, clock), WeekProposeCommand.Make(terminal, clock) };

    internal static Option<int?> Number()
    {
        var week = Parameters.WeekNumber("--week", "help.week.number");
        week.Required = true;
        return week;
    }

    /// <returns>The week of a number; null after saying that there is none.</returns>
    internal static SeasonWeek? Find(Season season, int number, Terminal terminal)
    {
        if (number <= season.Weeks.Length) return season.Weeks[number - 1];
        terminal.Complain("replan.no-week", number, season.Weeks.Length);
        return null;
    }
}
