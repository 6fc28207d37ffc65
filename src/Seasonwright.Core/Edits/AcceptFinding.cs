using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Accepts a finding of the rulebook with a reason, or releases a stop.</summary>
public sealed record AcceptFinding(FindingKey Finding, Acceptance Acceptance) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Describe(Finding.Rule);

    internal string Describe(string rule) =>
        Sentences.Say(Acceptance.Releaser is null ? "did.accept-finding" : "did.release-finding", rule, Acceptance.Reason, Acceptance.Releaser);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Acceptance);
        draft.Set(SeasonFacets.Accepted, Finding, Acceptance);
    }

    internal static void Check(Draft draft, Acceptance acceptance)
    {
        draft.Require(acceptance.Reason, "reason", SeasonDraft.LongestText);
        draft.Limit(acceptance.Figures, "figures", SeasonDraft.LongestText);
        draft.Limit(acceptance.Releaser, "releaser", SeasonDraft.LongestName);
        if ((acceptance.Releaser is null) != (acceptance.Role is null)) draft.Refuse("release-half", "releaser");
        if (acceptance.Size < 0) draft.Refuse("finding-size", "size", acceptance.Size);
    }
}
