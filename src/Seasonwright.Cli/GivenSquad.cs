using System.CommandLine;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk;
using Seasonwright.Desk.Squad;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Cli;

/// <summary>A squad list given beside a season: its people are players for as long as the command runs. No list tells who is out.</summary>
/// <param name="File">Null where none is given.</param>
/// <param name="AnswersFile">Null where no answers are given.</param>
internal sealed record GivenSquad(string? File, string? AnswersFile)
{
    public static Option<string?> Option() => Parameters.Path("--squad", "help.week.squad", "FILE");

    /// <summary>Reads the list; what it leaves open or held back is told.</summary>
    /// <returns>Its people, none but those who are certainly in, null where no list is given; or why the command must stop.</returns>
    public (IReadOnlyList<Player>? Players, Exit Exit) Read(Season season, Setup setup, Terminal terminal, TimeProvider clock)
    {
        if (File is null) return (null, Exit.Done);
        if (ListFiles.OpenBytes(File, terminal) is not { } bytes || ListFiles.OpenAnswers(AnswersFile, terminal) is not { } answers) return (null, Exit.BadInput);
        var list = SquadReader.Read(Path.GetFileName(File), bytes, new SquadOptions(DateOnly.FromDateTime(clock.GetLocalNow().DateTime), answers));
        var exit = ListFiles.Tell(list.Name, list.Questions, list.Problems, isBlocked: false, answers, terminal);
        if (list.HeldBack.Count > 0) terminal.Complain("squad.held", string.Join(", ", list.HeldBack.Select(held => held.Where)));
        var ids = new NaturalIds(season.Id);
        ValueList<SeasonId> grouped = list.Taken.Any(row => season.Groups.Any(group => IsCalled(group, row.Group))) ? [season.Id] : [];
        return ([.. list.Taken.Select(row => PlayerOf(row, season, setup, ids, grouped))], exit);
    }

    private static bool IsCalled(GroupLine group, string? name) => string.Equals(group.Name.Trim(), name?.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>With the team all season, and in the season's group that the list calls by its name.</summary>
    private static Player PlayerOf(SquadRow row, Season season, Setup setup, NaturalIds ids, ValueList<SeasonId> grouped)
    {
        var id = new PersonId(ids.Of("athlete", row.Line.ToString(CultureInfo.InvariantCulture)));
        var first = season.Days!.Value.First;
        var mass = row.Mass is { } entered && BodyMass.IsPossible(entered.Kilograms) ? new BodyMass(entered.Kilograms, BodyMassUnit.Kilogram) : null;
        var lifts = ListedLifts.Of(row.Lifts, id, mass?.Kilograms, first, setup, lift => Guid.ParseExact(ids.Of("lift", id.Text, lift.ToString()), "N"), default);
        return new Player(
            new Athlete(id, row.Family, row.Given, row.Number, row.Positions, row.Born, null),
            [new Membership(id, setup.Id, first, null, LeadingDays.None)], [], [],
            mass is null ? [] : [new WeighIn(Guid.ParseExact(ids.Of("mass", id.Text), "N"), id, first, mass, default)], lifts,
            [.. season.Groups.Where(group => IsCalled(group, row.Group)).Select(group => new GroupPlace(id, season.Id, group.Id, first, null))], grouped);
    }
}
