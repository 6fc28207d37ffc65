using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Names the team.</summary>
public sealed record SetTeamName(string Name) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-team-name");

    internal override void Decide(Draft draft)
    {
        draft.Require(Name, "name", SeasonDraft.LongestName);
        draft.Set(SetupFacets.TeamName, default, Name);
    }
}
