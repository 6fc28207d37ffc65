using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>Adds or changes a group line.</summary>
public sealed record SetGroup(GroupLine Group) : SeasonEdit
{
    public override string Describe(Season season) => Sentences.Say("did.set-group", Group.Name);

    internal override void Decide(SeasonDraft draft)
    {
        draft.Require(Group.Name, $"group/{Group.Id}.name", SeasonDraft.LongestName);
        if (Math.Abs(Group.PhaseShift) > Frame.MostWeeks) draft.Refuse("phase-shift", $"group/{Group.Id}.phaseShift", Group.PhaseShift, Frame.MostWeeks);
        draft.Set(SeasonFacets.Group, Group.Id, Group);
    }
}
