using System.CommandLine;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Cards;

namespace Seasonwright.Cli;

/// <summary>Writes the cards of a day's sessions for a squad: every athlete's exercises, weights and boxes to write in.</summary>
internal static class CardsCommand
{
    private const int UsualPerPage = 2;

    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var (file, squad, answers) = (Parameters.Season(), GivenSquad.Option(), Parameters.Answers());
        var (day, perPage, paper) = (Parameters.Day("--date", "help.cards.date"), Parameters.OneOf("--per-page", "help.cards.per-page", CardPaper.Counts, UsualPerPage), Parameters.Word("--paper", "help.cards.paper", Paper.A4));
        var target = Parameters.Out("help.cards.out");
        squad.Required = true;
        var command = new Command("cards", Texts.Say("help.cards")) { file, squad, answers, day, perPage, paper, target };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), new GivenSquad(call.GetValue(squad), call.GetValue(answers)), call.GetValue(day),
            call.GetValue(perPage) ?? UsualPerPage, call.GetValue(paper) == Paper.Letter ? PaperSize.Letter : PaperSize.A4, call.GetRequiredValue(target), terminal, clock));
        return command;
    }

    private static Exit Run(string file, GivenSquad squad, DateOnly day, int perPage, PaperSize paper, string target, Terminal terminal, TimeProvider clock)
    {
        if (SeasonFiles.Open(file, terminal) is not { } content) return Exit.BadInput;
        var shared = new SharedSeason(content.Season, content.Setup, content.Edition ?? Edition.Draft(DateOnly.FromDateTime(clock.GetLocalNow().DateTime)));
        if (SessionsOn(shared.Season, day, terminal) is not { } sessions) return Exit.BadInput;
        var (players, exit) = squad.Read(shared.Season, shared.Setup, terminal, clock);
        if (exit != Exit.Done) return exit;
        var cards = sessions.Select(session => SquadCards.Of(shared, session, players!)).ToList();
        var made = target.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) ? HandOuts.CardWorkbook(cards) : HandOuts.Cards(cards, perPage, paper);
        if (!OutputFile.Write(target, made.Bytes, terminal)) return Exit.BadInput;
        foreach (var one in cards) terminal.Tell(one.Cards.Count == 1 ? "cards.made-one" : "cards.made", one.Cards.Count, one.Title, one.When, one.Cards.Count(card => card.IsModified), shared.EditionWords);
        foreach (var one in cards.Where(one => one.Without.Count > 0)) terminal.Tell("cards.without", string.Join(", ", one.Without));
        terminal.Tell("cards.list-only");
        return Exit.Done;
    }

    /// <summary>The day's sessions that have a workout; null after saying that there is none, and which days have one.</summary>
    private static List<Session>? SessionsOn(Season season, DateOnly day, Terminal terminal)
    {
        List<Session> written = [.. season.Sessions.Where(session => !session.IsCancelled && session.Workout is { } id && season.Workout(id) is not null)];
        List<Session> there = [.. written.Where(session => session.Day == day)];
        if (there.Count > 0) return there;
        var near = written.Select(session => session.Day).Distinct().OrderBy(other => Math.Abs(other.DayNumber - day.DayNumber)).Take(3).Order().Select(other => other.Iso());
        terminal.Complain(written.Count > 0 ? "cards.none-that-day" : "cards.none", day.Iso(), string.Join(", ", near));
        return null;
    }

    private enum Paper
    {
        A4,
        Letter,
    }
}
