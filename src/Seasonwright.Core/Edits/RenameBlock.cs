using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Gives a block the coach's own name; the kind stays beneath. No name gives the kind's back.</summary>
public sealed record RenameBlock(BlockId Block, string? Name) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => season.Facts.Find(SeasonFacets.Block, Block) is { } block
        ? Sentences.Say("did.rename-block", RunWords.Of(block), RunWords.Of(block with { Name = RunWords.NameOrNone(Name) }))
        : Sentences.Say("did.rename-block", Block, Name);

    internal override void Decide(SeasonDraft draft)
    {
        draft.Limit(Name, $"block/{Block}.name", SeasonDraft.LongestName);
        if (draft.Find(SeasonFacets.Block, Block) is not { } block) draft.Refuse("block-unknown", $"block/{Block}", Block);
        else draft.Set(SeasonFacets.Block, Block, block with { Name = RunWords.NameOrNone(Name) });
    }
}
