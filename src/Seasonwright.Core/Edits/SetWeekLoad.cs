using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets the target load of weeks, first and last inside; no load takes it back.</summary>
public sealed record SetWeekLoad(WeekId First, WeekId Last, Load? Load) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Load is { } load
        ? Sentences.Say("did.set-load", WeekWords.Of(season, First, Last), load.PercentOf(setup.ReferenceWeek))
        : Sentences.Say("did.clear-load", WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        foreach (var week in draft.OpenWeeks(First, Last))
        {
            if (Load is { } load) draft.Set(SeasonFacets.WeekLoad, week.Id, load);
            else draft.Remove(SeasonFacets.WeekLoad, week.Id);
        }
    }
}
