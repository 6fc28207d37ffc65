using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Paints a phase over weeks, first and last inside. What lay there gives way.</summary>
/// <param name="Phase">The phase: a new id, or one that exists and is extended or recast.</param>
/// <param name="Name">The coach's own name; null for the kind's.</param>
/// <param name="Rest">A new id for the right part, should an older phase be cut in two.</param>
public sealed record PaintPhase(WeekId First, WeekId Last, PhaseId Phase, PhaseKind Kind, PhaseId Rest, string? Name = null) : SeasonEdit
{
    private Phase Run => new(Kind, RunWords.NameOrNone(Name));

    public override string Describe(Season season, Setup setup) => Sentences.Say("did.paint-phase", RunWords.Of(Run), WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        draft.Limit(Name, $"phase/{Phase}.name", SeasonDraft.LongestName);
        draft.Paint(SeasonFacets.WeekPhase, SeasonFacets.Phase, draft.OpenWeeks(First, Last), (Phase, Run), Rest);
    }
}
