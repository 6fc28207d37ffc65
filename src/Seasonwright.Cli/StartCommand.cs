using System.CommandLine;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;

namespace Seasonwright.Cli;

/// <summary>Starts a season in a file, with the matches of a fixture list where one is given.</summary>
internal static class StartCommand
{
    public static Command Make(Terminal terminal)
    {
        var from = Parameters.Day("--from", "help.start.from");
        var weeks = Parameters.Weeks("--weeks", "help.start.weeks");
        var weekStart = Parameters.Word("--week-start", "help.start.week-start", DayOfWeek.Monday);
        var team = new Option<string>("--team") { Description = Texts.Say("help.start.team"), HelpName = "NAME", Required = true };
        var fixtures = Parameters.Path("--fixtures", "help.start.fixtures", "FILE");
        var fixturesTeam = new Option<string?>("--fixtures-team") { Description = Texts.Say("help.start.fixtures-team"), HelpName = "NAME" };
        var answers = Parameters.Answers();
        var file = Parameters.Out();
        var command = new Command("start", Texts.Say("help.start")) { from, weeks, weekStart, team, fixtures, fixturesTeam, answers, file };
        foreach (var option in new[] { fixturesTeam, answers })
            command.Validators.Add(result =>
            {
                if (result.GetResult(option) is not null && result.GetResult(fixtures) is null) result.AddError(Texts.Say("start.no-fixtures", option.Name));
            });
        command.SetAction(call =>
        {
            var grid = new WeekGrid(call.GetValue(from), call.GetValue(weekStart) ?? DayOfWeek.Monday, call.GetValue(weeks));
            var name = call.GetRequiredValue(team);
            var list = call.GetValue(fixtures) is { } path ? new GivenFixtures(path, call.GetValue(fixturesTeam) ?? name, call.GetValue(answers)) : null;
            return (int)Run(grid, name, list, call.GetRequiredValue(file), terminal);
        });
        return command;
    }

    private static Exit Run(WeekGrid grid, string team, GivenFixtures? list, string file, Terminal terminal)
    {
        var id = NaturalIds.Season(team, grid.FirstDay);
        var ids = new NaturalIds(id);
        var (matches, exit) = list is null ? (null, Exit.Done) : list.Read(grid.Span, ids, terminal);
        if (exit != Exit.Done) return exit;

        var season = Season.Empty(id);
        var setup = Setup.Empty(new TeamId(ids.Of("team", team)));
        var start = new StartSeason(grid.FirstDay, grid.WeekStart, Enumerable.Range(1, grid.Count).Select(ids.Week).ToValueList(), new TeamCard(team, SeasonTitle.Of(grid.Span)));
        foreach (var edit in new Edit?[] { start, new SetTeamName(team), new SetLocale(new LocaleSettings(WeekStart: grid.WeekStart)), matches }.OfType<Edit>())
            if (Edits.Do(ref season, ref setup, edit, terminal) is null) return Exit.Refused;

        if (!SeasonFiles.Save(file, season, setup, terminal)) return Exit.BadInput;
        terminal.Tell("start.done", team, grid.Count, grid.Span.First, grid.Span.Last, file);
        if (season.Weeks[0].Days.Length < 7) terminal.Tell("start.short", season.Weeks[0].Days.Length, season.Weeks[0].Days.Last);
        if (list is not null) terminal.Tell(season.AllMatches.Length == 1 ? "start.matches.one" : "start.matches", season.AllMatches.Length, list.File);
        if (season.Outside.Count > 0) terminal.Tell(season.Outside.Count == 1 ? "outside.one" : "outside", season.Outside.Count);
        return Exit.Done;
    }
}
