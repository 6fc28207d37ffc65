using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a goal.</summary>
public sealed record RemoveGoal(GoalId Goal) : SeasonEdit
{
    public override string Describe(Season season) => Sentences.Say("did.remove-goal", season.Facts.Find(SeasonFacets.Goal, Goal)?.Measure);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Goal, Goal) is null) draft.Refuse("goal-unknown", $"goal/{Goal}", Goal);
        draft.Remove(SeasonFacets.Goal, Goal);
    }
}
