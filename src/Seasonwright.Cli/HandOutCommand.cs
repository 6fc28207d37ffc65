using System.CommandLine;
using System.Text;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.HandOut.Posters;

namespace Seasonwright.Cli;

/// <summary>Writes what is handed out of a season into a folder.</summary>
internal static class HandOutCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var file = Parameters.Season();
        var poster = Parameters.Word<Paper>("--poster", "help.hand-out.poster");
        var svg = Flag("--svg");
        var headCoach = Flag("--head-coach");
        var workbook = Flag("--workbook");
        var calendar = Flag("--calendar");
        var week = Parameters.WeekNumber("--week", "help.hand-out.week");
        var key = Flag("--key-matches");
        var grey = Flag("--grey");
        var folder = Parameters.Path("--out", "help.hand-out.out", "DIR");
        folder.Required = true;
        var command = new Command("hand-out", Texts.Say("help.hand-out")) { file, poster, svg, headCoach, workbook, calendar, week, key, grey, folder };
        Option[] things = [poster, svg, headCoach, workbook, calendar, week];
        command.Validators.Add(result =>
        {
            if (things.All(thing => result.GetResult(thing) is not { Implicit: false })) result.AddError(Texts.Say("hand-out.nothing", string.Join(", ", things.Select(thing => thing.Name))));
        });
        command.SetAction(call =>
        {
            var (number, place, today) = (call.GetValue(week), call.GetRequiredValue(folder)!, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
            if (SeasonFiles.Open(call.GetRequiredValue(file), terminal) is not { } content) return (int)Exit.BadInput;
            var shared = new SharedSeason(content.Season, content.Setup, content.Edition ?? Edition.Draft(today), call.GetValue(key));
            if (number > shared.Season.Weeks.Length)
            {
                terminal.Complain("hand-out.no-week", number, shared.Season.Weeks.Length);
                return (int)Exit.BadInput;
            }
            var choices = new PosterChoices(Sheet(call.GetValue(poster) ?? Paper.A3), call.GetValue(grey) ? Scheme.Grey : Scheme.Light);
            var sheet = Upright(call.GetValue(poster));
            var revisions = CalendarRevisions.None;
            if (call.GetValue(calendar) && !Earlier(place, shared, terminal, out revisions)) return (int)Exit.BadInput;
            List<HandOutFile> files = [];
            if (call.GetValue(poster) is not null) files.Add(HandOuts.Poster(shared, choices));
            if (call.GetValue(svg)) files.Add(HandOuts.PosterDrawing(shared, choices));
            if (call.GetValue(headCoach)) files.AddRange([HandOuts.HeadCoachPaper(shared, today, sheet), HandOuts.HeadCoachPage(shared, today)]);
            if (call.GetValue(workbook)) files.Add(HandOuts.Workbook(shared));
            if (call.GetValue(calendar)) files.Add(HandOuts.Calendar(shared, new CalendarChoices(), revisions));
            if (number is { } one) files.Add(HandOuts.WeekSheet(shared, shared.Season.Weeks[one - 1], sheet));
            return (int)Write(shared, files, place, terminal);
        });
        return command;

        Option<bool> Flag(string name) => new(name) { Description = Texts.Say($"help.hand-out.{name[2..]}") };
    }

    private static Exit Write(SharedSeason shared, List<HandOutFile> files, string folder, Terminal terminal)
    {
        if (!Made(folder, terminal)) return Exit.BadInput;
        foreach (var made in files)
        {
            if (!OutputFile.Write(Path.Combine(folder, made.Name), made.Bytes, terminal)) return Exit.BadInput;
            terminal.Out.WriteLine(made.Name);
        }
        terminal.Tell("hand-out.edition", shared.Name, shared.EditionWords, folder);
        return Exit.Done;
    }

    /// <summary>The calendar handed out here before, so that a changed entry counts as newer than the one others hold.</summary>
    /// <returns>False after saying that what lies there under its name is something else, which stays.</returns>
    private static bool Earlier(string folder, SharedSeason shared, Terminal terminal, out CalendarRevisions revisions)
    {
        revisions = CalendarRevisions.None;
        var path = Path.Combine(folder, HandOuts.CalendarName(shared));
        if (!File.Exists(path)) return true;
        if (InputFile.Read(path, terminal) is not { } bytes) return false;
        var (held, problem) = CalendarRevisions.After(Encoding.UTF8.GetString(bytes), path, shared.Season.Id);
        revisions = held ?? revisions;
        if (problem is not null) terminal.Complain(problem);
        return problem is null;
    }

    private static bool Made(string folder, Terminal terminal)
    {
        try
        {
            Directory.CreateDirectory(folder);
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            terminal.Complain("out.unwritable", folder, error.Message);
            return false;
        }
    }

    /// <summary>Sheets for the hand, on the family of paper that the poster is on.</summary>
    private static PaperSize Upright(Paper? poster) => poster is Paper.Tabloid or Paper.Letter ? PaperSize.Letter : PaperSize.A4;

    private static PaperSize Sheet(Paper paper) => PaperSize.Find(paper.ToString())!;

    private enum Paper
    {
        A3,
        A4,
        Tabloid,
        Letter,
    }
}
