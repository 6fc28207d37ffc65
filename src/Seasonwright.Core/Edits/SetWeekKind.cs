using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says what weeks are for, first and last inside; no kind takes it back.</summary>
public sealed record SetWeekKind(WeekId First, WeekId Last, WeekKind? Kind) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) =>
        Kind is { } kind ? Sentences.Say("did.set-kind", WeekWords.Of(season, First, Last), Sentences.Say($"kind.{kind}")) : Sentences.Say("did.clear-kind", WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        foreach (var week in draft.OpenWeeks(First, Last))
        {
            if (Kind is { } kind) draft.Set(SeasonFacets.WeekKind, week.Id, kind);
            else draft.Remove(SeasonFacets.WeekKind, week.Id);
        }
    }
}
