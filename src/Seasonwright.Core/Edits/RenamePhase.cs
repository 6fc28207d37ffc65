using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Gives a phase the coach's own name; the kind stays beneath. No name gives the kind's back.</summary>
public sealed record RenamePhase(PhaseId Phase, string? Name) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => season.Facts.Find(SeasonFacets.Phase, Phase) is { } phase
        ? Sentences.Say("did.rename-phase", RunWords.Of(phase), RunWords.Of(phase with { Name = RunWords.NameOrNone(Name) }))
        : Sentences.Say("did.rename-phase", Phase, Name);

    internal override void Decide(SeasonDraft draft)
    {
        draft.Limit(Name, $"phase/{Phase}.name", SeasonDraft.LongestName);
        if (draft.Find(SeasonFacets.Phase, Phase) is not { } phase) draft.Refuse("phase-unknown", $"phase/{Phase}", Phase);
        else draft.Set(SeasonFacets.Phase, Phase, phase with { Name = RunWords.NameOrNone(Name) });
    }
}
