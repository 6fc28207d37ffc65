using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Clears weeks of any block, first and last inside.</summary>
/// <param name="Rest">A new id for the right part, should a block be cut in two.</param>
public sealed record EraseBlock(WeekId First, WeekId Last, BlockId Rest) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.erase-block", WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft) =>
        draft.Paint(SeasonFacets.WeekBlock, SeasonFacets.Block, draft.OpenWeeks(First, Last), null, Rest);
}
