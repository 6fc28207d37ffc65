using System.CommandLine;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;

namespace Seasonwright.Cli;

/// <summary>Starts a season in a file.</summary>
internal static class StartCommand
{
    public static Command Make(Terminal terminal)
    {
        var from = Parameters.Day("--from", "help.start.from");
        var weeks = Parameters.Weeks("--weeks", "help.start.weeks");
        var weekStart = Parameters.Word("--week-start", "help.start.week-start", DayOfWeek.Monday);
        var team = new Option<string>("--team") { Description = Texts.Say("help.start.team"), HelpName = "NAME", Required = true };
        var file = Parameters.Out();
        var command = new Command("start", Texts.Say("help.start")) { from, weeks, weekStart, team, file };
        command.SetAction(call => (int)Run(
            call.GetValue(from), call.GetValue(weeks), call.GetValue(weekStart) ?? DayOfWeek.Monday, call.GetRequiredValue(team), call.GetRequiredValue(file), terminal));
        return command;
    }

    private static Exit Run(DateOnly from, int weeks, DayOfWeek weekStart, string team, string file, Terminal terminal)
    {
        var id = NaturalIds.Season(team, from);
        var ids = new NaturalIds(id);
        var start = new StartSeason(from, weekStart, Enumerable.Range(1, weeks).Select(ids.Week).ToValueList(), new TeamCard(team, Title(from, weekStart, weeks)));
        var season = Season.Empty(id);
        var setup = Setup.Empty(new TeamId(ids.Of("team", team)));
        if (Edits.Do(ref season, ref setup, start, terminal) is null) return Exit.Refused;
        foreach (var edit in new SetupEdit[] { new SetTeamName(team), new SetLocale(new LocaleSettings(WeekStart: weekStart)) })
            if (Edits.Do(ref season, ref setup, edit, terminal) is null) return Exit.Refused;

        if (!SeasonFiles.Save(file, season, setup, terminal)) return Exit.BadInput;
        terminal.Tell("start.done", team, season.Weeks.Length, season.Days!.Value.First, season.Days.Value.Last, file);
        if (season.Weeks[0].Days.Length < 7) terminal.Tell("start.short", season.Weeks[0].Days.Length, season.Weeks[0].Days.Last);
        return Exit.Done;
    }

    /// <summary>"2027-28", or "2027" within one year.</summary>
    private static string Title(DateOnly from, DayOfWeek weekStart, int weeks)
    {
        var last = new WeekGrid(from, weekStart, weeks).Span.Last;
        return last.Year == from.Year ? from.Year.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{from.Year}-{last.Year % 100:00}");
    }
}
