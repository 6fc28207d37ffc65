using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says that a week's sessions are laid out, first and last inside, or takes that back.</summary>
public sealed record MarkReady(WeekId First, WeekId Last, bool Ready) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say(Ready ? "did.ready" : "did.unready", WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        foreach (var week in draft.Weeks(First, Last)) draft.SetOrRemove(SeasonFacets.WeekReady, week.Id, (bool?)Ready);
    }
}
