using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says what is asked of the head coach's practices in a week; an empty text takes it away. It is handed to the head coach: no health details belong here.</summary>
public sealed record SetPracticeWish(WeekId Week, string? Text) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.set-practice-wish", WeekWords.Of(season, Week, Week));

    internal override void Decide(SeasonDraft draft)
    {
        draft.Limit(Text, $"week/{Week}.wish", SeasonDraft.LongestText);
        foreach (var week in draft.Weeks(Week, Week))
        {
            if (string.IsNullOrWhiteSpace(Text)) draft.Remove(SeasonFacets.PracticeWish, week.Id);
            else draft.Set(SeasonFacets.PracticeWish, week.Id, Text.Trim());
        }
    }
}
