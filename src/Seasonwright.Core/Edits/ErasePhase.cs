using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Clears weeks of any phase, first and last inside.</summary>
/// <param name="Rest">A new id for the right part, should a phase be cut in two.</param>
public sealed record ErasePhase(WeekId First, WeekId Last, PhaseId Rest) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.erase-phase", WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft) =>
        draft.Paint(SeasonFacets.WeekPhase, SeasonFacets.Phase, draft.OpenWeeks(First, Last), null, Rest);
}
