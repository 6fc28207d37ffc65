using System.CommandLine;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;

namespace Seasonwright.Cli;

/// <summary>Starts a season in a file, with the matches and events of lists where they are given.</summary>
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
        var events = Parameters.Path("--events", "help.start.events", "FILE");
        var answers = Parameters.Answers();
        var file = Parameters.Out();
        var command = new Command("start", Texts.Say("help.start")) { from, weeks, weekStart, team, fixtures, fixturesTeam, events, answers, file };
        Needs(fixturesTeam, "start.no-fixtures", fixtures);
        Needs(answers, "start.no-list", fixtures, events);
        command.SetAction(call =>
        {
            var grid = new WeekGrid(call.GetValue(from), call.GetValue(weekStart) ?? DayOfWeek.Monday, call.GetValue(weeks));
            var name = call.GetRequiredValue(team);
            var lists = new GivenLists(call.GetValue(fixtures), call.GetValue(fixturesTeam) ?? name, call.GetValue(events), call.GetValue(answers));
            return (int)Run(grid, name, lists, call.GetRequiredValue(file), terminal);
        });
        return command;

        void Needs(Option option, string complaint, params Option[] lists) => command.Validators.Add(result =>
        {
            if (result.GetResult(option) is not null && lists.All(list => result.GetResult(list) is null)) result.AddError(Texts.Say(complaint, option.Name));
        });
    }

    private static Exit Run(WeekGrid grid, string team, GivenLists lists, string file, Terminal terminal)
    {
        var id = NaturalIds.Season(team, grid.FirstDay);
        var ids = new NaturalIds(id);
        var (taken, exit) = lists.Read(grid.Span, ids, terminal);
        if (exit != Exit.Done) return exit;

        var season = Season.Empty(id);
        var setup = Setup.Empty(new TeamId(ids.Of("team", team)));
        var start = new StartSeason(grid.FirstDay, grid.WeekStart, Enumerable.Range(1, grid.Count).Select(ids.Week).ToValueList(), new TeamCard(team, SeasonTitle.Of(grid.Span)));
        foreach (var edit in new Edit[] { start, new SetTeamName(team), new SetLocale(new LocaleSettings(WeekStart: grid.WeekStart)) }.Concat(taken))
            if (Edits.Do(ref season, ref setup, edit, terminal) is null) return Exit.Refused;

        if (!SeasonFiles.Save(file, season, setup, terminal)) return Exit.BadInput;
        terminal.Tell("start.done", team, grid.Count, grid.Span.First, grid.Span.Last, file);
        if (season.Weeks[0].Days.Length < 7) terminal.Tell("start.short", season.Weeks[0].Days.Length, season.Weeks[0].Days.Last);
        if (lists.Fixtures is not null) terminal.Tell(season.AllMatches.Length == 1 ? "start.matches.one" : "start.matches", season.AllMatches.Length, lists.Fixtures);
        var (events, tests) = (season.AllEvents.Count(), season.AllTestDays.Count());
        if (lists.Events is not null) terminal.Tell(events == 1 ? "start.events.one" : "start.events", events, lists.Events);
        if (tests > 0) terminal.Tell(tests == 1 ? "start.tests.one" : "start.tests", tests, lists.Events);
        if (season.Outside.Count > 0) terminal.Tell(season.Outside.Count == 1 ? "outside.one" : "outside", season.Outside.Count);
        return Exit.Done;
    }
}
