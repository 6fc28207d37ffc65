using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds or changes one of up to three goals.</summary>
public sealed record SetGoal(Goal Goal) : SeasonEdit
{
    public const int Most = 3;

    public override string Describe(Season season, Setup setup) => Sentences.Say("did.set-goal", Goal.Measure);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Goal);
        if (draft.Before.Goals.Count(goal => goal.Id != Goal.Id) >= Most) draft.Refuse("goals-full", "goal", Most);
        draft.Set(SeasonFacets.Goal, Goal.Id, Goal);
    }

    internal static void Check(Draft draft, Goal goal)
    {
        draft.Require(goal.Measure, $"goal/{goal.Id}.measure", SeasonDraft.LongestName);
        draft.RequirePossible(goal.By, $"goal/{goal.Id}.by");
        if (goal.Rank is < 1 or > Most) draft.Refuse("goal-rank", $"goal/{goal.Id}.rank", goal.Rank, Most);
    }
}
