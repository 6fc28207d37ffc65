using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Cli;

/// <summary>A fixture list that a new season is to take in.</summary>
/// <param name="Team">As the list spells it.</param>
/// <param name="AnswersFile">Null where no answers are given.</param>
internal sealed record GivenFixtures(string File, string Team, string? AnswersFile)
{
    /// <summary>Reads the list; what it leaves open is told.</summary>
    /// <param name="season">Offered for dates without a year.</param>
    /// <param name="ids">The season's.</param>
    /// <returns>The edit that takes the list in, null where nothing of it can be written; or why the command must stop.</returns>
    public (ImportFixtures? Matches, Exit Exit) Read(DaySpan season, NaturalIds ids, Terminal terminal)
    {
        if (ListFiles.Open(File, terminal) is not { } source || ListFiles.OpenAnswers(AnswersFile, terminal) is not { } answers) return (null, Exit.BadInput);
        var list = FixtureReader.Read(source, new FixtureOptions(Team, answers, season));
        var update = FixtureUpdate.Compare([], list, answers);
        ListFiles.Tell(list.Problems, terminal);
        ListFiles.Tell(list.Name, [.. list.Questions, .. update.Questions], list.IsBlocked, answers, terminal);
        if (list.Problems.Any(problem => problem.Id == "team-unknown")) terminal.Complain("start.fixtures-team");
        if (!list.IsBlocked) return (FixtureImport.Edit(list, update, row => new MatchId(ids.Of("match", row.NaturalKey))), Exit.Done);
        terminal.Complain("nothing-written");
        return (null, list.Problems.Count > 0 ? Exit.BadInput : Exit.Refused);
    }
}
