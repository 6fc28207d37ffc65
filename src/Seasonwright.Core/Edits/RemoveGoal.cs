using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a goal.</summary>
public sealed record RemoveGoal(GoalId Goal) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-goal", season.Facts.Find(SeasonFacets.Goal, Goal)?.Measure);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Goal, Goal) is null) draft.Refuse("goal-unknown", $"goal/{Goal}", Goal);
        draft.Remove(SeasonFacets.Goal, Goal);
    }
}
