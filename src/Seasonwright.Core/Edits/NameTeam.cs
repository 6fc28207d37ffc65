using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets the head of the season: team, title, crest, sport.</summary>
public sealed record NameTeam(TeamCard Team) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.name-team", Team.Name);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Team);
        draft.Set(SeasonFacets.Team, default, Team);
    }

    internal static void Check(Draft draft, TeamCard team)
    {
        draft.Require(team.Name, "team.name", SeasonDraft.LongestName);
        draft.Limit(team.Title, "team.title", SeasonDraft.LongestName);
        draft.Limit(team.Crest, "team.crest", 3);
        draft.Limit(team.Sport, "team.sport", SeasonDraft.LongestName);
        if (team.CrestColour is { } colour && !(colour.Length == 7 && colour[0] == '#' && colour[1..].All(char.IsAsciiHexDigit)))
            draft.Refuse("colour", "team.crestColour", colour);
    }
}
