using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says how a group's load differs in weeks, first and last inside; no factor takes the difference back.</summary>
public sealed record SetGroupWeek(GroupId Group, WeekId First, WeekId Last, Percent? LoadFactor) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) =>
        Sentences.Say(LoadFactor is null ? "did.clear-group-week" : "did.set-group-week",
            season.Facts.Find(SeasonFacets.Group, Group)?.Name, LoadFactor, WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Group, Group) is null) draft.Refuse("group-unknown", $"group/{Group}", Group);
        foreach (var week in draft.OpenWeeks(First, Last))
        {
            var subject = new Pair<GroupId, WeekId>(Group, week.Id);
            if (LoadFactor is { } factor) draft.Set(SeasonFacets.GroupWeek, subject, new GroupWeek(factor));
            else draft.Remove(SeasonFacets.GroupWeek, subject);
        }
    }
}
