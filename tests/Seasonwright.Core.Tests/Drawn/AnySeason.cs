using CsCheck;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Drawn;

/// <summary>Seasons and setups that edits have made, with the steps that made them.</summary>
internal static class AnySeason
{
    private static readonly Gen<SeasonEdit> Start = Gen.Select(Gen.Int[0, 30], Gen.Enum<DayOfWeek>(), Gen.Int[1, 24], (day, weekStart, count) => (SeasonEdit)new StartSeason(
        new DateOnly(2027, 7, 5).AddDays(day), weekStart, Enumerable.Range(1, count).Select(number => new WeekId($"w{number}")).ToValueList(), new TeamCard("Harbour Vale", "2027-28")));

    /// <summary>A season's steps from the start, as they were made.</summary>
    public static readonly Gen<History> History = Gen.Select(Start, AnyEdit.SeasonEdit.Array[0, 40], (start, edits) => Drawn.History.Of([start, .. edits]));

    public static readonly Gen<Season> Season = History.Select(history => history.Season);

    /// <summary>A season of a few edits, where another one is wanted beside the first.</summary>
    public static readonly Gen<Season> Young = Gen.Select(Start, AnyEdit.SeasonEdit.Array[0, 4], (start, edits) => Drawn.History.Of([start, .. edits]).Season);

    public static readonly Gen<Core.Rooms.Club> Club = AnyEdit.ClubEdit.Array[0, 8].Select(edits => edits.Aggregate(Core.Rooms.Club.Empty, (club, edit) =>
        Decider.Decide(club, edit) is Accepted accepted ? club.With(accepted.Step) : club));

    public static readonly Gen<Setup> Setup = AnyEdit.SetupEdit.Array[0, 12].Select(edits => edits.Aggregate(Core.Setups.Setup.Empty(new("team")), (setup, edit) =>
        Decider.Decide(setup, edit) is Accepted accepted ? setup.With(accepted.Step) : setup));
}

/// <summary>A season and the steps that led to it from nothing.</summary>
internal sealed record History(Season Season, IReadOnlyList<Step> Steps)
{
    public static Season Nothing { get; } = Season.Empty(new("season"));

    /// <summary>What is left of these edits when the refused ones are passed over.</summary>
    public static History Of(IEnumerable<SeasonEdit> edits)
    {
        var season = Nothing;
        var steps = new List<Step>();
        foreach (var edit in edits)
        {
            if (Decider.Decide(season, edit) is not Accepted accepted) continue;
            season = season.With(accepted.Step);
            steps.Add(accepted.Step);
        }
        return new History(season, steps);
    }

    /// <summary>After these edits, none of which may be refused.</summary>
    public static Season After(params SeasonEdit[] edits) => After(Nothing, edits);

    /// <inheritdoc cref="After(SeasonEdit[])"/>
    public static Season After(Season season, params SeasonEdit[] edits) => edits.Aggregate(season, (now, edit) => Decider.Decide(now, edit) switch
    {
        Accepted accepted => now.With(accepted.Step),
        var refused => throw new InvalidOperationException($"{edit} was refused: {refused}"),
    });
}
