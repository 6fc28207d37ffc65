using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Paints a block over weeks, first and last inside. What lay there gives way.</summary>
/// <param name="Block">The block: a new id, or one that exists and is extended or recast.</param>
/// <param name="Name">The coach's own name; null for the kind's.</param>
/// <param name="Rest">A new id for the right part, should an older block be cut in two.</param>
public sealed record PaintBlock(WeekId First, WeekId Last, BlockId Block, BlockKind Kind, BlockId Rest, string? Name = null) : SeasonEdit
{
    private Block Run => new(Kind, RunWords.NameOrNone(Name));

    public override string Describe(Season season, Setup setup) => Sentences.Say("did.paint-block", RunWords.Of(Run), WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        draft.Limit(Name, $"block/{Block}.name", SeasonDraft.LongestName);
        draft.Paint(SeasonFacets.WeekBlock, SeasonFacets.Block, draft.OpenWeeks(First, Last), (Block, Run), Rest);
    }
}
