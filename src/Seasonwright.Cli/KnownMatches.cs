using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Wire;

namespace Seasonwright.Cli;

/// <summary>What a fixture list is compared with: the matches of a season file, or those of an earlier state of the list.</summary>
/// <param name="Days">The season's days; null for an earlier list.</param>
/// <param name="Order">The team's way of writing dates; null for an earlier list.</param>
internal sealed record KnownMatches(IReadOnlyList<Match> Matches, DaySpan? Days = null, DayOrder? Order = null)
{
    /// <returns>The matches; null with the exit code after saying why there are none.</returns>
    public static (KnownMatches? Known, Exit Exit) Open(string path, string team, Answers answers, Terminal terminal)
    {
        if (InputFile.Read(path, terminal) is not { } bytes) return (null, Exit.BadInput);
        if (SeasonFile.IsNamed(bytes))
            return SeasonFiles.Read(bytes, path, terminal) is var (season, setup) ? (Of(season, setup), Exit.Done) : (null, Exit.BadInput);
        var list = FixtureReader.Read(SourceText.OfBytes(Path.GetFileName(path), bytes), new FixtureOptions(team, answers));
        ListFiles.Tell(list.Problems, terminal);
        if (list.Problems.Count > 0) return (null, Exit.BadInput);
        if (list.IsBlocked)
        {
            ListFiles.Tell(list.Name, list.Questions, isBlocked: true, answers, terminal);
            return (null, Exit.Refused);
        }
        var ids = new NaturalIds(new SeasonId("earlier"));
        var taken = FixtureImport.Edit(list, FixtureUpdate.Compare([], list, answers), row => new MatchId(ids.Of("match", row.NaturalKey)));
        return (new KnownMatches(taken?.Matches ?? []), Exit.Done);
    }

    private static KnownMatches Of(Season season, Setup setup) =>
        new(season.AllMatches, season.Days, setup.Locale.DateOrder == DateOrder.MonthDayYear ? DayOrder.MonthFirst : DayOrder.DayFirst);
}
