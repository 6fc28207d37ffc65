using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says how a group's emphasis differs in weeks, first and last inside; null takes the difference back, <see cref="Emphasis.None"/> is a difference.</summary>
public sealed record SetGroupEmphasis(GroupId Group, WeekId First, WeekId Last, QualityId Quality, Emphasis? Emphasis) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) =>
        Sentences.Say(Emphasis is null ? "did.clear-group-emphasis" : "did.set-group-emphasis",
            season.Facts.Find(SeasonFacets.Group, Group)?.Name, setup.NameOf(Quality), WeekWords.Of(season, First, Last), Emphasis is { } emphasis ? Sentences.Say($"emphasis.{emphasis}") : null);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Group, Group) is null) draft.Refuse("group-unknown", $"group/{Group}", Group);
        foreach (var week in draft.OpenWeeks(First, Last))
        {
            var subject = new Pair<GroupId, Pair<WeekId, QualityId>>(Group, new(week.Id, Quality));
            if (Emphasis is { } emphasis) draft.Set(SeasonFacets.GroupEmphasis, subject, emphasis);
            else draft.Remove(SeasonFacets.GroupEmphasis, subject);
        }
    }
}
