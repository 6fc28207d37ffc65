using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Enters the head coach's practices of weeks, first and last inside; none takes the entry back.</summary>
public sealed record SetPractices(WeekId First, WeekId Last, Practices? Practices) : SeasonEdit
{
    public const int Most = 14;

    public override string Describe(Season season, Setup setup) => Sentences.Say(Practices is null ? "did.clear-practices" : "did.set-practices", WeekWords.Of(season, First, Last), Practices?.Count);

    internal override void Decide(SeasonDraft draft)
    {
        CheckCount(draft, Practices?.Count ?? 0, "practices.count");
        foreach (var week in draft.Weeks(First, Last))
        {
            if (Practices is { } practices) draft.Set(SeasonFacets.WeekPractices, week.Id, practices);
            else draft.Remove(SeasonFacets.WeekPractices, week.Id);
        }
    }

    internal static void CheckCount(Draft draft, int count, string field)
    {
        if (count is < 0 or > Most) draft.Refuse("practices-count", field, count, Most);
    }
}
