using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Writes a week's note; an empty one takes it away. No health details belong here.</summary>
public sealed record SetWeekNote(WeekId Week, string? Text) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.set-week-note", WeekWords.Of(season, Week, Week));

    internal override void Decide(SeasonDraft draft)
    {
        draft.Limit(Text, $"week/{Week}.note", SeasonDraft.LongestText);
        foreach (var week in draft.Weeks(Week, Week))
        {
            if (string.IsNullOrWhiteSpace(Text)) draft.Remove(SeasonFacets.WeekNote, week.Id);
            else draft.Set(SeasonFacets.WeekNote, week.Id, Text.Trim());
        }
    }
}
