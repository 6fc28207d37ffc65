using Seasonwright.Core;
using Seasonwright.Core.Edits;

namespace Seasonwright.Solver;

/// <summary>A year proposed: what each stage found, and the edits that make the season so.</summary>
/// <param name="Wishes">What it was made by.</param>
/// <param name="Structure">Stage A; it names what it breaks where the wishes cannot all hold.</param>
/// <param name="Loads">Stage C.</param>
/// <param name="Emphasis">Stage B.</param>
/// <param name="Clash">What cannot all hold; null for a season whose wishes can.</param>
/// <param name="ClashInWords">The same in the coach's words, and how the plan that breaks least breaks it; empty where nothing clashes.</param>
/// <param name="Reasons">For each week why it is as it is.</param>
/// <param name="Edits">For the weeks that are open, only what changes; none for a plan that stands so already.</param>
public sealed record Proposal(Wishes Wishes, Structure Structure, LoadPlan Loads, EmphasisPlan Emphasis, Clash? Clash, ValueList<string> ClashInWords, ValueList<ValueList<WeekReason>> Reasons, ValueList<SeasonEdit> Edits)
{
    /// <summary>What is said of wishes that matches and entered practices pass by themselves.</summary>
    public ValueList<string> ByFacts { get; init; } = ValueList<string>.Empty;

    /// <summary>What phases, kinds and loads are worth together, in units; comparable between proposals for one season and the same wishes.</summary>
    public long Value => Structure.Fixed + Loads.Value;
}
