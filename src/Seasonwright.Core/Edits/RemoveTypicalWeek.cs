using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Forgets a typical week. Weeks that were laid out by it stay.</summary>
public sealed record RemoveTypicalWeek(TypicalWeekId Week) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.remove-typical-week", setup.TypicalWeeks.FirstOrDefault(week => week.Id == Week)?.Name);

    internal override void Decide(Draft draft)
    {
        if (draft.Find(SetupFacets.TypicalWeek, Week) is null) draft.Refuse("typical-week-unknown", $"typicalWeek/{Week}", Week);
        draft.Remove(SetupFacets.TypicalWeek, Week);
    }
}
