using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Locks weeks, first and last inside, or unlocks them. A locked week keeps its phase, block, kind, load and emphasis whatever is painted or proposed.</summary>
public sealed record LockWeeks(WeekId First, WeekId Last, bool Locked) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say(Locked ? "did.lock" : "did.unlock", WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        foreach (var week in draft.Weeks(First, Last)) draft.SetOrRemove(SeasonFacets.WeekLock, week.Id, (bool?)Locked);
    }
}
