using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Fills a new season from a file, or from last season, in one step.</summary>
/// <param name="From">Where it came from, in words, for the history.</param>
public sealed record AdoptSeason(FactSet Facts, string From) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.adopt", From);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Before.IsStarted) draft.Refuse("season-started", "frame");
        draft.Limit(From, "from", SeasonDraft.LongestName);
        Sound.CheckSeason(draft, Facts);
        if (!draft.IsRefused) draft.Adopt(Facts);
    }
}
