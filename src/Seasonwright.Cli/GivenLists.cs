using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Desk;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Cli;

/// <summary>The lists that a new season is to take in, each null where none is given.</summary>
/// <param name="Team">As the fixture list spells it.</param>
/// <param name="AnswersFile">Null where no answers are given.</param>
internal sealed record GivenLists(string? Fixtures, string Team, string? Events, string? AnswersFile)
{
    /// <summary>Reads the lists; what they leave open is told.</summary>
    /// <param name="season">Offered for dates without a year.</param>
    /// <param name="ids">The season's.</param>
    /// <returns>The edits that take the lists in, none for a list of which nothing can be written; or why the command must stop.</returns>
    public (IReadOnlyList<SeasonEdit> Edits, Exit Exit) Read(DaySpan season, NaturalIds ids, Terminal terminal)
    {
        if (ListFiles.OpenAnswers(AnswersFile, terminal) is not { } answers) return ([], Exit.BadInput);
        var (edits, worst) = (new List<SeasonEdit>(), Exit.Done);
        foreach (var (file, take) in new (string?, Func<SourceText, TakenList>)[]
        {
            (Fixtures, source => TakenList.Fixtures(source, new FixtureOptions(Team, answers, season), ids)),
            (Events, source => TakenList.Events(source, new EventReading(answers, season), ids)),
        })
        {
            if (file is null) continue;
            if (ListFiles.Open(file, terminal) is not { } source) return ([], Exit.BadInput);
            var list = take(source);
            if (list.Tell(answers, terminal) is var exit && exit > worst) worst = exit;
            if (list.Problems.Any(problem => problem.Id == "team-unknown")) terminal.Complain("start.fixtures-team");
            if (list.Edit is { } edit) edits.Add(edit);
        }
        if (worst != Exit.Done) terminal.Complain("nothing-written");
        return (edits, worst);
    }
}
