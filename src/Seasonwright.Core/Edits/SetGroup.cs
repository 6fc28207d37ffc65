using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds or changes a group line.</summary>
public sealed record SetGroup(GroupLine Group) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.set-group", Group.Name);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Group);
        draft.Set(SeasonFacets.Group, Group.Id, Group);
    }

    internal static void Check(Draft draft, GroupLine group)
    {
        draft.Require(group.Name, $"group/{group.Id}.name", SeasonDraft.LongestName);
        if (group.PhaseShift is < -Frame.MostWeeks or > Frame.MostWeeks) draft.Refuse("phase-shift", $"group/{group.Id}.phaseShift", group.PhaseShift, Frame.MostWeeks);
    }
}
