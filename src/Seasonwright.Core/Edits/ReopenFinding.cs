using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Takes an acceptance back: the finding is shown again.</summary>
public sealed record ReopenFinding(FindingKey Finding) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Describe(Finding.Rule);

    internal static string Describe(string rule) => Sentences.Say("did.reopen-finding", rule);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Accepted, Finding) is null) draft.Refuse("finding-unknown", "finding", Finding.Rule);
        else draft.Remove(SeasonFacets.Accepted, Finding);
    }
}
